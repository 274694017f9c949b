// Preact and htm, put together once.
import { Fragment, h, render } from "./vendor/preact.js";
import htm from "./vendor/htm.js";

export { Fragment, render };
export { useEffect, useLayoutEffect, useMemo, useRef, useState } from "./vendor/hooks.js";
export const html = htm.bind(h);

/**
 * A view that is drawn anew only when one of its properties is another one: what it shows of the store has to be among them.
 * @param {(properties: object) => object} view The view.
 */
export function still(view) {
  const isOther = (before, next) => Object.keys({ ...before, ...next }).some((each) => before[each] !== next[each]);
  return function Still(properties) {
    this.shouldComponentUpdate = (next) => isOther(this.props, next);
    return h(view, properties);
  };
}
