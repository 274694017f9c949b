// The one input of the grid, over the cell that is typed into.
import { html, useLayoutEffect, useRef } from "./view.js";

/**
 * @param {object} cell
 * @param {string} cell.text What stands in it at first.
 * @param {(value: string, rowStep: number, columnStep: number) => void} cell.finish Keeps what was typed, and goes on.
 * @param {() => void} cell.leave Forgets it.
 */
export function Cell({ text, label, choices, finish, leave }) {
  const input = useRef(null);
  const isLeft = useRef(false); // taking the input away takes the focus off it, which is no second leaving
  useLayoutEffect(() => {
    input.current.focus();
    input.current.setSelectionRange(text.length, text.length);
  }, []);
  const keys = (event) => {
    const isKept = event.key === "Enter" || event.key === "Tab";
    isLeft.current = isKept || event.key === "Escape";
    if (isKept) {
      event.preventDefault();
      finish(event.currentTarget.value, event.key === "Enter" ? 1 : 0, event.key === "Tab" ? (event.shiftKey ? -1 : 1) : 0);
    } else if (event.key === "Escape") {
      event.preventDefault();
      leave();
    }
    event.stopPropagation();
  };
  return html`<input ref=${input} class="cell" defaultValue=${text} aria-label=${label} list=${choices.length ? "choices" : null} autocomplete="off"
      onKeyDown=${keys} onBlur=${(event) => isLeft.current || finish(event.currentTarget.value, 0, 0)} />
    ${choices.length ? html`<datalist id="choices">${choices.map((each) => html`<option value=${each} />`)}</datalist>` : null}`;
}
