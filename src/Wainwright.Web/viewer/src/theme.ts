// Runs before the first paint, so that a dark screen never flashes light.
const kept = localStorage.getItem("wain.theme");
if (kept === "dark" || kept === "light") document.documentElement.dataset["theme"] = kept;
