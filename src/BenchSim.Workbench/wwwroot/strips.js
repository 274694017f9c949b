// One space by day: places held, the places there are as a line to drag, what is wanted above it, and when trays wait.
import { html, still, useMemo, useState } from "./view.js";
import { aheadOf, edit, store } from "./store.js";
import { useDrag } from "./drag.js";
import { dayWords } from "./dates.js";
import { askWhy, weekWords } from "./why.js";

const HEIGHT = 84;
const TOP = 8;
const BOTTOM = 12;

/** The place of the text that says how many places a space has. */
export const placesOf = (space) => ({ do: "Key", section: "space", entry: space.entry, key: "places" });

/**
 * A space.
 * @param {object} strip
 * @param {object} strip.space The space (Showing/AnswerDocument.cs).
 * @param {object} strip.axis The time axis.
 * @param {number | null} strip.day The day that is read off.
 * @param {string} [strip.ahead] The places it was given that no answer tells yet.
 */
export const Strip = still(({ space, axis, day, ahead }) => {
  const [drag, setDrag] = useState(null);
  const [typed, setTyped] = useState(null); // what is being typed, and what stood there when that began
  const most = useMemo(
    () => Math.max(4, ...space.places, ...space.high, ...space.wanted, ...space.basePlaces) * 1.12,
    [space],
  );
  // While the hand is down the scale stays.
  const scale = drag?.scale ?? most;
  const y = (places) => TOP + (HEIGHT - TOP - BOTTOM) * (1 - places / scale);
  const key = placesOf(space);
  // The places there are now, of which the line that is drawn may not tell yet.
  const thereAre = () => Number(aheadOf(key) ?? space.given);
  const now = Number(ahead ?? space.given);
  const { given, line: drawn } = drag ?? { given: space.given, line: space.places };
  const places = drag ? drag.first + drag.steps : now;
  const moved = places - given;
  // A house that is shut has no places, whatever its benches would hold.
  const shifted = drawn.map((each) => (each === 0 && given > 0 ? 0 : Math.max(0, each + moved)));
  const stands = () => aheadOf(key) ?? written(key);
  const change = (was, value) => [{ ...key, was, value: String(value) }];
  const set = (was, value) => edit(`${space.name}: ${value} ${word(value)}`, change(was, value));
  const keep = (text) => {
    const was = typed?.was ?? stands();
    setTyped(null);
    if (text !== "" && Number(text) !== now) {
      set(was, Number(text));
    }
  };
  const hand = useDrag({
    axis: "y",
    take: () => ({ was: stands(), first: thereAre(), given, line: drawn, scale }),
    steps: (pixels, took) => Math.max(-took.first, -Math.round((pixels / (HEIGHT - TOP - BOTTOM)) * took.scale)),
    changes: (steps, took) => change(took.was, took.first + steps),
    show: (steps, took) => setDrag(steps === 0 ? null : { ...took, steps }),
    done: (steps, took) => set(took.was, took.first + steps),
  });
  const keys = (event) => {
    const step = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: 10, PageDown: -10 }[event.key];
    if (step) {
      event.preventDefault();
      set(stands(), Math.max(0, thereAre() + step));
    }
  };
  const waits = useMemo(() => runs(space.waiting), [space]);
  const label = `Places of ${space.name}`;
  return html`<div class="row strip" data-space=${space.id}>
    <div class="name">
      <strong>${space.name}</strong>
      <label class="places"><span class="spoken">${label}</span>
        <input type="number" min="0" value=${typed?.text ?? places} disabled=${space.entry < 0}
          onInput=${(event) => setTyped({ text: event.currentTarget.value, was: typed?.was ?? stands() })} onChange=${(event) => keep(event.currentTarget.value)} /> ${word(places)}</label>
      ${space.isSized ? html`<span class="quiet"> by its size</span>` : null}
    </div>
    <svg width=${axis.plot} height=${HEIGHT} aria-label=${spoken(space, axis, waits)} role="group">
      ${axis.ticks.filter((tick) => tick.isMonth).map((tick) => html`<line class="month" x1=${axis.x(tick.day)} x2=${axis.x(tick.day)} y1="0" y2=${HEIGHT} />`)}
      <line class="floor" x1="0" x2=${axis.plot} y1=${y(0)} y2=${y(0)} />
      <path class="band" d=${area(space.low, space.high, axis, y)} />
      ${space.baseMiddle.length ? html`<path class="ghost" d=${line(space.baseMiddle, axis, y)} />` : null}
      ${space.basePlaces.length ? html`<path class="ghost places" d=${line(space.basePlaces, axis, y)} />` : null}
      <path class="wanted" d=${line(space.wanted, axis, y)} />
      <path class="held" d=${line(space.middle, axis, y)} />
      ${waits.map(
        ([from, to]) => html`<g class="waits" role="button" tabindex="0" aria-label=${weekWords(space, axis.firstDay, from, to)}
          onClick=${(event) => askWhy({ space: space.id, day: dayAt(event, axis, from, to) })}
          onKeyDown=${(event) => {
            if (event.key === "Enter" || event.key === " ") {
              event.preventDefault();
              askWhy({ space: space.id, day: from });
            }
          }}>
          <rect x=${axis.x(from)} y="0" width=${Math.max(2, axis.x(to + 1) - axis.x(from))} height=${y(0)} />
          <text x=${axis.x((from + to + 1) / 2)} y=${HEIGHT - 1}>▲</text>
        </g>`,
      )}
      <g class="line" role="slider" tabindex=${space.entry < 0 ? null : 0} aria-label=${label} aria-orientation="vertical" aria-valuemin="0" aria-valuemax=${Math.ceil(scale)}
        aria-valuenow=${places} aria-valuetext=${`${places} ${word(places)}`} onKeyDown=${keys} ...${space.entry < 0 ? {} : hand}>
        <path class="hit" d=${line(shifted, axis, y)} />
        <path class="capacity" d=${line(shifted, axis, y)} />
        ${moved ? html`<text class="strong" x="4" y=${y(places) - 3}>${places}</text>` : null}
      </g>
      ${day === null ? null : html`<circle class="dot" cx=${axis.x(day + 0.5)} cy=${y(space.middle[day])} r="3.5" />`}
    </svg>
  </div>`;
});

// The day of a run under the pointer; a click by the keys of a helper comes without one.
function dayAt(event, axis, from, to) {
  const box = event.currentTarget.ownerSVGElement.getBoundingClientRect();
  const day = Math.floor(((event.clientX - box.left) / axis.plot) * axis.days);
  return day >= from && day <= to ? day : from;
}

// A value as the desk has it.
const written = ({ section, entry, key }) =>
  store.desk.sections.find((each) => each.section === section && each.entry === entry)?.values.find((each) => each.key === key)?.value ?? "";

const word = (count) => (count === 1 ? "place" : "places");

// Runs of days on which trays wait in at least one season of ten.
function runs(waiting) {
  const found = [];
  waiting.forEach((count, day) => {
    const last = found.at(-1);
    if (count > 0 && last && last[1] >= day - 1) {
      last[1] = day;
    } else if (count > 0) {
      found.push([day, day]);
    }
  });
  return found;
}

function spoken(space, axis, waits) {
  const peak = Math.max(...space.middle);
  const when = dayWords(axis.firstDay, space.middle.indexOf(peak));
  return `${space.name}: at most ${peak} of ${space.places[space.middle.indexOf(peak)]} places in the median, on ${when}. ${
    waits.length
      ? "Trays may wait " + waits.map(([from, to]) => `${dayWords(axis.firstDay, from)} to ${dayWords(axis.firstDay, to)}`).join(", ") + "."
      : "No trays wait."
  }`;
}

// A number holds for its whole day: steps, drawn where it changes.
function line(values, axis, y) {
  let path = `M0 ${y(values[0]).toFixed(1)}`;
  values.forEach((value, day) => {
    if (day > 0 && value !== values[day - 1]) {
      path += `H${axis.x(day).toFixed(1)}V${y(value).toFixed(1)}`;
    }
  });
  return path + `H${axis.x(values.length).toFixed(1)}`;
}

function area(low, high, axis, y) {
  let back = "";
  for (let day = low.length - 1; day >= 0; day--) {
    back += `L${axis.x(day + 1).toFixed(1)} ${y(low[day]).toFixed(1)}H${axis.x(day).toFixed(1)}`;
  }
  return line(high, axis, y) + back + "Z";
}
