import { build } from "esbuild";

const out = process.argv[2] ?? "dist";

await build({
  bundle: true, target: "es2022", minify: true, legalComments: "linked", logLevel: "warning", format: "esm",
  entryPoints: ["src/viewer.ts", "src/browser.ts"], outdir: `${out}/viewer`,
});
await build({
  bundle: true, target: "es2022", minify: true, logLevel: "warning", format: "iife",
  entryPoints: ["src/theme.ts"], outdir: `${out}/viewer`,
});
