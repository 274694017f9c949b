// The sheet on one page of paper: before it is printed it is drawn at a width of its own, and made smaller until it fits the page.

/** Width of the sheet on paper before it is made smaller, in CSS pixels: wide enough for the names and the weeks. */
export const PAPER_WIDTH = 1084;

// What A4 and Letter both hold within margins of 10 mm, in CSS pixels; of the height a little less, since text breaks otherwise on paper.
const PAGE = { width: 718, height: 925 };

// A plan that is longer than that runs over several pages.
const SMALLEST = 0.3;

/**
 * Sees to the printing of the sheet while it is open.
 * @param {(isOnPaper: boolean) => void} draw Draws it for paper, or for the screen again.
 * @returns {() => void} Ends it.
 */
export function watchPrinting(draw) {
  const root = document.documentElement;
  const begin = () => {
    root.classList.add("printing");
    draw(true);
  };
  // What was drawn anew stands there when the next listener is called.
  const fit = () => {
    const bench = document.getElementById("bench");
    const scale = Math.min(1, PAGE.width / bench.offsetWidth, PAGE.height / bench.scrollHeight);
    document.body.style.zoom = String(Math.max(SMALLEST, scale));
  };
  const end = () => {
    root.classList.remove("printing");
    document.body.style.zoom = "";
    draw(false);
  };
  const listeners = [["beforeprint", begin], ["beforeprint", fit], ["afterprint", end]];
  listeners.forEach(([name, listener]) => window.addEventListener(name, listener));
  return () => listeners.forEach(([name, listener]) => window.removeEventListener(name, listener));
}
