// Things that a hand drags: the pointer is held by what it took, and what was there when it took it stays the measure until it lets go.
import { useRef } from "./view.js";
import { live, settle } from "./store.js";

/**
 * Handlers of a thing that is dragged along one axis. What `take` gives when the hand takes it goes to all that follows.
 * @param {object} thing
 * @param {"x" | "y"} thing.axis The axis.
 * @param {() => object} thing.take What is there when the hand takes it.
 * @param {(pixels: number, took: object) => number} thing.steps Whole steps of so many pixels.
 * @param {(steps: number, took: object) => object[]} thing.changes The changes of so many steps.
 * @param {(steps: number, took: object) => void} thing.show Shows it moved by so many steps while the hand is down; by none when it is up.
 * @param {(steps: number, took: object) => void} thing.done Makes it so.
 * @param {() => void} [thing.tapped] The hand let go where it took it.
 */
export function useDrag(thing) {
  const held = useRef(null);
  const place = (event) => (thing.axis === "x" ? event.clientX : event.clientY);
  const finish = (event, isKept) => {
    const drag = held.current;
    if (!drag) {
      return;
    }
    held.current = null;
    settle();
    drag.thing.show(0, drag.took);
    if (drag.at !== 0) {
      if (isKept) {
        drag.thing.done(drag.at, drag.took);
      } else {
        live([]);
      }
    } else if (isKept) {
      drag.thing.tapped?.();
    }
  };
  return {
    onPointerDown: (event) => {
      if (event.button === 0) {
        event.currentTarget.setPointerCapture(event.pointerId);
        event.currentTarget.focus({ preventScroll: true });
        event.preventDefault();
        event.stopPropagation();
        held.current = { from: place(event), at: 0, thing, took: thing.take() };
      }
    },
    onPointerMove: (event) => {
      const drag = held.current;
      const at = drag ? drag.thing.steps(place(event) - drag.from, drag.took) : 0;
      if (drag && at !== drag.at) {
        drag.at = at;
        drag.thing.show(at, drag.took);
        live(at === 0 ? [] : drag.thing.changes(at, drag.took));
      }
    },
    onPointerUp: (event) => finish(event, true),
    onPointerCancel: (event) => finish(event, false),
  };
}
