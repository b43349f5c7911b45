/** What a browser keeps for itself: who is at the bench, units, light or dark. Never sent anywhere but to the page's own server. */
export interface Kept { who: string | null; units: string | null; theme: string | null }

const item = (name: string) => `wain.${name}`;

export function kept(): Kept {
  const read = (name: string) => localStorage.getItem(item(name));
  return { who: read("who"), units: read("units"), theme: read("theme") };
}

export function keep(name: "who" | "units" | "theme", value: string | null): void {
  if (value === null) localStorage.removeItem(item(name));
  else localStorage.setItem(item(name), value);
  if (name === "theme") {
    if (value === "dark" || value === "light") document.documentElement.dataset["theme"] = value;
    else delete document.documentElement.dataset["theme"];
    document.dispatchEvent(new Event("wain:theme"));
  }
}

/** What this browser notes of a piece of work, by a name of its own. */
export function noted(name: string): string | null { return localStorage.getItem(item(`note.${name}`)); }

export function note(name: string, value: string | null): void {
  if (value === null) localStorage.removeItem(item(`note.${name}`));
  else localStorage.setItem(item(`note.${name}`), value);
}

interface Keys { invokeMethodAsync(name: "Key", key: "undo" | "redo"): Promise<void> }

/** Undo, redo and search by key, except while somebody types. */
export function listen(to: Keys): { stop(): void } {
  const stop = new AbortController();
  document.addEventListener("keydown", e => {
    const typing = e.target instanceof HTMLElement && e.target.matches("input:not([type=checkbox], [type=radio], [type=range]), textarea, select, [contenteditable]");
    const key = e.key.toLowerCase();
    const meant = (e.ctrlKey || e.metaKey) && !e.altKey
      ? key === "z" ? (e.shiftKey ? "redo" : "undo") : key === "y" ? "redo" : null
      : key === "/" && !e.ctrlKey ? "search" : null;
    if (!meant || typing) return;
    e.preventDefault();
    // at once: whatever is typed next belongs into the search
    if (meant === "search") document.querySelector<HTMLElement>("input[type=search]")?.focus();
    else void to.invokeMethodAsync("Key", meant);
  }, { signal: stop.signal });
  document.documentElement.dataset["keys"] = "yes";
  return { stop: () => stop.abort() };
}

export function live(): void { document.documentElement.dataset["live"] = "yes"; }
export function show(dialog: HTMLDialogElement): void { if (!dialog.open) dialog.showModal(); }
export function close(dialog: HTMLDialogElement): void { dialog.close(); }
export function focus(selector: string): void { document.querySelector<HTMLElement>(selector)?.focus(); }

/** Scrolls a strip sideways until one of its children stands in the middle, the page itself staying where it is. */
export function center(strip: HTMLElement): void {
  const here = strip.querySelector<HTMLElement>("[aria-current]");
  if (!here || strip.scrollWidth <= strip.clientWidth) return;
  const by = here.getBoundingClientRect().left - strip.getBoundingClientRect().left - (strip.clientWidth - here.offsetWidth) / 2;
  strip.scrollLeft += by;
}

export function print(): void { window.print(); }
