// A press on a button takes a moment between down and up. What changes the layout in between moves
// the button away from under the finger, and the press is lost: so an error text that a left field
// gets waits until the press is over.

/** ms; the click follows the release */
const CLICK = 50;

let pressed = false;

/** Listen from the start of the page. */
export function watchPresses() {
  addEventListener("pointerdown", () => (pressed = true), { capture: true, passive: true });
  for (const type of ["pointerup", "pointercancel"])
    addEventListener(type, () => (pressed = false), { capture: true, passive: true });
}

/** @returns {Promise<void>} */
export async function pressOver() {
  if (!pressed) return;
  await new Promise((over) => {
    for (const type of ["pointerup", "pointercancel"]) addEventListener(type, over, { once: true });
  });
  await new Promise((clicked) => setTimeout(clicked, CLICK));
}
