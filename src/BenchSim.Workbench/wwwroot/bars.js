// One batch from sowing to field: a bar to drag or to move by keys, whole or by an end.
import { html, still, useState } from "./view.js";
import { aheadOf, edit, say, store } from "./store.js";
import { askWhy } from "./why.js";
import { useDrag } from "./drag.js";
import { dayWords, later } from "./dates.js";

const HEIGHT = 24;

const STILL = { days: 0, end: "both", batch: null };

/**
 * A batch.
 * @param {object} bar
 * @param {object} bar.batch The batch (Showing/AnswerDocument.cs).
 * @param {object} bar.axis The time axis.
 * @param {string} bar.reliable The share of seasons below which a batch is called weak, in words.
 * @param {"waits" | "holds" | null} bar.mark What it is marked with.
 * @param {boolean} bar.isAsked Whether the answer why is open below it.
 */
export const Bar = still(({ batch: newest, axis, reliable, mark, isAsked }) => {
  const [moved, setMoved] = useState(STILL);
  // While the hand is down the bar is what it took, moved, not what is played of it meanwhile.
  const batch = moved.batch ?? newest;
  const why = () => askWhy({ batch: newest.id });
  const handOf = (end) => ({
    axis: "x",
    take: () => ({ batch, line: lineOf(batch) }),
    steps: axis.daysOf,
    changes: (days, took) => moves(took, days, end),
    show: (days, took) => setMoved(days === 0 ? STILL : { days, end, batch: took.batch }),
    done: (days, took) => move(took, days, end),
    tapped: why,
  });
  const hands = { both: useDrag(handOf("both")), sow: useDrag(handOf("sow")), set_out: useDrag(handOf("set_out")) };
  const keys = (end) => (event) => {
    const step = { ArrowLeft: -1, ArrowRight: 1, PageUp: -7, PageDown: 7 }[event.key];
    if (step) {
      event.preventDefault();
      event.stopPropagation();
      move({ batch, line: lineOf(batch) }, event.shiftKey ? step * 7 : step, end);
    } else if (event.key === "Enter") {
      why();
    }
  };
  const canMove = batch.row >= 0;
  const shift = (end) => (moved.end === "both" || moved.end === end ? moved.days : 0);
  const sow = batch.sow + shift("sow");
  const out = batch.setOut + shift("set_out");
  const inner = (day) => day + (moved.end === "both" ? moved.days : 0);
  const x = (day) => axis.x(day);
  const parts = batch.stays.map(({ kind, from, to }) => [kind, from === batch.sow ? sow : inner(from), to === batch.setOut ? out : inner(to)])
    .filter(([, from, to]) => to > from);
  const words = `${batch.id}, ${batch.crop}: sown ${dayWords(axis.firstDay, batch.sow)}, set out ${dayWords(axis.firstDay, batch.setOut)}, ${batch.trays}; complete in time in ${batch.complete} of seasons`;
  const slider = (end, label, at) => ({
    role: "slider",
    tabindex: canMove ? 0 : null,
    "aria-label": label,
    "aria-valuemin": 0,
    "aria-valuemax": axis.days,
    "aria-valuenow": at,
    "aria-valuetext": end === "both" ? words : dayWords(axis.firstDay, at),
    onKeyDown: keys(end),
    ...(canMove ? hands[end] : {}),
  });
  const left = x(Math.min(sow, out));
  const width = Math.max(6, x(out) - left);
  return html`<div class=${"row bar" + (mark ? " lit" : "")} data-batch=${batch.id}>
    <button type="button" class="name link" aria-expanded=${isAsked ? "true" : "false"} onClick=${why}>
      ${mark ? html`<span aria-hidden="true">${mark === "waits" ? "▲" : "■"} </span><span class="spoken">${mark} </span>` : null}
      ${batch.isWeak ? html`<span class="weak" title=${`Complete in time in fewer than ${reliable} of seasons`}>✖ </span>` : null}${batch.id}
      <span class="quiet"> ${batch.crop}</span></button>
    <svg width=${axis.plot} height=${HEIGHT}>
      <g class="body" ...${slider("both", batch.id, sow)}>
        <rect class="hit" x=${left} y="0" width=${width} height=${HEIGHT} />
        ${parts.map(([kind, from, to]) => html`<rect class=${kind} x=${x(from)} y="5" width=${Math.max(1, x(to) - x(from))} height="14" />`)}
        ${batch.potUp === null ? null : html`<rect class="pot" x=${x(inner(batch.potUp)) - 1} y="3" width="3" height="18" />`}
      </g>
      ${moved.days === 0 && batch.outLate !== null && batch.outLate > batch.setOut
        ? html`<line class="late" x1=${x(batch.setOut)} x2=${x(batch.outLate)} y1="12" y2="12" />` : null}
      ${moved.days === 0 && batch.outMedian !== null ? html`<path class="diamond" d=${`M${x(batch.outMedian)} 6l5 6l-5 6l-5-6z`} />` : null}
      <rect class="end" x=${left - 7} y="2" width="9" height="20" ...${slider("sow", `Sowing of ${batch.id}`, sow)} />
      <rect class="end" x=${x(out) - 2} y="2" width="9" height="20" ...${slider("set_out", `Setting out of ${batch.id}`, out)} />
      ${moved.days ? html`<text class=${"strong" + (x(out) > axis.plot - 130 ? " end" : "")} x=${x(out) > axis.plot - 130 ? left - 8 : x(out) + 10} y="16">${dayWords(axis.firstDay, sow)} to ${dayWords(axis.firstDay, out)}</text>` : null}
    </svg>
  </div>`;
});

function move(took, days, end) {
  const { columns, rows } = store.desk.plan;
  if (rows[took.batch.row]?.[columns.indexOf("id")] !== took.line.id) {
    say("The lines of the plan have changed since this answer. Move the bar again when the new one is there.", true);
    return;
  }
  const count = Math.abs(days);
  edit(`${took.batch.id} ${count} ${count === 1 ? "day" : "days"} ${days > 0 ? "later" : "earlier"}`, moves(took, days, end));
}

// The dates of a batch's line: as the program read them, or as this page has changed them since.
function lineOf({ row, line }) {
  const date = (column, read) => {
    const changed = aheadOf({ row, column });
    return changed === undefined ? read : { text: changed, date: changed };
  };
  return { id: line.id, sow: date("sow", line.sow), set_out: date("set_out", line.setOut) };
}

/**
 * The changes of the plan that move a batch, with all successions of its line. An end that has no date of its own gets one.
 * @param {{batch: object, line: object}} took The batch, and the dates of its line.
 * @param {"both" | "sow" | "set_out"} end What is moved.
 */
function moves({ batch, line }, days, end) {
  const wanted = ["sow", "set_out"].filter((column) => (end === "both" ? line[column].text !== "" : end === column));
  return wanted.map((column) => ({ do: "Cell", row: batch.row, column, was: line[column].text, value: later(line[column].date, days) }));
}
