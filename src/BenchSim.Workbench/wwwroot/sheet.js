// The sheet: the weeks of the season along the top, shared by the spaces above and the batches below.
import { Fragment, html, still, useLayoutEffect, useMemo, useRef, useState } from "./view.js";
import { aheadOf, store } from "./store.js";
import { Strip, placesOf } from "./strips.js";
import { Bar } from "./bars.js";
import { dayWords, ticks } from "./dates.js";
import { PAPER_WIDTH, watchPrinting } from "./print.js";
import { Marks, Why, isWhyOf, markOf } from "./why.js";

export function Sheet() {
  const box = useRef(null);
  const [onScreen, setWidth] = useState(0);
  const [day, setDay] = useState(null);
  const [group, setGroup] = useState("date");
  useLayoutEffect(() => {
    const watcher = new ResizeObserver(([entry]) => setWidth(Math.floor(entry.contentRect.width)));
    watcher.observe(box.current);
    return () => watcher.disconnect();
  }, []);
  const [isOnPaper, setOnPaper] = useState(false);
  useLayoutEffect(() => watchPrinting(setOnPaper), []);
  const width = isOnPaper ? PAPER_WIDTH : onScreen;
  const answer = store.answer?.faults.length ? store.last : store.answer;
  const axis = useMemo(() => (answer && width ? axisOf(answer, width) : null), [answer?.firstDay, answer?.days, width]);
  return html`
    <div class=${"sheet" + (store.answer?.faults.length ? " stale" : "")} ref=${box}>
      ${answer && axis
        ? html`
            <div class="pointed" onPointerMove=${(event) => event.pointerType === "mouse" && setDay(axis.dayAt(event, box.current))}>
              <${Times} axis=${axis} day=${day} setDay=${setDay} />
              <h2 class="rowhead">Spaces</h2>
              <${Legend} />
              ${answer.spaces.map(
                (space) => html`<${Fragment} key=${space.id}><${Strip} space=${space} axis=${axis} day=${day} ahead=${aheadOf(placesOf(space))} />
                  ${isWhyOf({ space: space.id }) ? html`<${Why} answer=${answer} />` : null}<//>`,
              )}
              <${Batches} answer=${answer} axis=${axis} group=${group} setGroup=${setGroup} />
              ${day === null ? null : html`<div class="dayline" style=${{ left: `${axis.left + axis.x(day)}px` }} aria-hidden="true"></div>`}
            </div>
            ${day === null || store.why ? null : html`<${Numbers} answer=${answer} day=${day} />`}
          `
        : html`<p class="wait">${store.answer?.faults.length ? "The season stands here once the faults above are mended." : "Playing the first seasons …"}</p>`}
    </div>
  `;
}

// Names stand at the left of their row; on a narrow page above it.
function axisOf(answer, width) {
  const left = width < 640 ? 0 : 176;
  const plot = width - left - 8;
  const x = (day) => (day / answer.days) * plot;
  return {
    left, plot, x,
    days: answer.days,
    firstDay: answer.firstDay,
    ticks: ticks(answer.firstDay, answer.days),
    daysOf: (pixels) => Math.round((pixels / plot) * answer.days),
    dayAt: (event, element) => {
      const at = Math.floor(((event.clientX - element.getBoundingClientRect().left - left) / plot) * answer.days);
      return at >= 0 && at < answer.days ? at : null;
    },
  };
}

const Times = still(({ axis, day, setDay }) => {
  const words = day === null ? "No day chosen" : dayWords(axis.firstDay, day);
  const keys = (event) => {
    const step = { ArrowLeft: -1, ArrowRight: 1, PageUp: -7, PageDown: 7 }[event.key];
    if (step || event.key === "Home" || event.key === "Escape") {
      event.preventDefault();
      setDay(event.key === "Escape" ? null : event.key === "Home" ? 0 : Math.min(axis.days - 1, Math.max(0, (day ?? 0) + step)));
    }
  };
  return html`<div class="row times">
    <span class="name">${day === null ? "Week of" : words}</span>
    <svg width=${axis.plot} height="30" role="slider" tabindex="0" aria-label="Day that is read off" aria-valuemin="0" aria-valuemax=${axis.days - 1}
      aria-valuenow=${day ?? 0} aria-valuetext=${words} onKeyDown=${keys} onClick=${(event) => setDay(axis.daysOf(event.offsetX))}>
      ${axis.ticks.map((tick) =>
        tick.isMonth
          ? html`<g><line class="month" x1=${axis.x(tick.day)} x2=${axis.x(tick.day)} y1="0" y2="30" /><text class="strong" x=${axis.x(tick.day) + 3} y="12">${tick.words}</text></g>`
          : axis.plot > 560
            ? html`<text class="faint" x=${axis.x(tick.day)} y="27">${tick.words}</text>`
            : null,
      )}
      ${day === null ? null : html`<path class="here" d=${`M${axis.x(day) - 5} 0h10l-5 8z`} />`}
    </svg>
  </div>`;
});

const Legend = still(() => html`<p class="key quiet">
  <span><i class="sw held"></i>places held, median</span> <span><i class="sw band"></i>8 seasons of 10</span>
  <span><i class="sw capacity"></i>places there are: drag it</span> <span><i class="sw wanted"></i>wanted</span>
  <span><i class="sw waits">▲</i>trays wait in 1 season of 10 or more</span> <span><i class="sw ghost"></i>the files</span>
</p>`);

function Numbers({ answer, day }) {
  return html`<aside class="numbers" aria-label="Numbers of the day">
    <strong>${dayWords(answer.firstDay, day)}</strong>
    ${answer.spaces.map(
      (space) => html`<span key=${space.id}>${space.name}: ${space.middle[day]} of ${space.places[day]}${space.waiting[day] > 0 ? `, ${space.waiting[day]} may wait` : ""}</span>`,
    )}
  </aside>`;
}

const GROUPS = [["date", "field date"], ["crop", "crop"], ["grower", "grower"]];

function Batches({ answer, axis, group, setGroup }) {
  const groups = useMemo(() => grouped(answer.batches, group), [answer, group]);
  // A bar that goes to another place among the others takes the focus with it.
  const focused = useRef(null);
  focused.current = document.activeElement?.closest("[data-batch]") ? document.activeElement : null;
  useLayoutEffect(() => {
    if (focused.current?.isConnected && document.activeElement === document.body) {
      focused.current.focus({ preventScroll: true });
    }
  });
  const rank = (batch) => ["waits", "holds", null].indexOf(markOf(batch));
  return html`
    <div class="rowhead batches">
      <h2>Batches</h2>
      <label>in order of <select onChange=${(event) => setGroup(event.currentTarget.value)}>
        ${GROUPS.map(([id, words]) => html`<option value=${id} selected=${group === id}>${words}</option>`)}
      </select></label>
      <p class="key quiet"><span><i class="sw mat"></i>on the mat</span> <span><i class="sw bench"></i>on the bench</span>
        <span><i class="sw table"></i>on the table</span> <span><i class="sw">│</i>potted up</span> <span><i class="sw">◆</i>out, median</span>
        <span><i class="sw late"></i>last trays, 1 season of 10</span></p>
    </div>
    <${Marks} />
    ${groups.map(([name, batches]) => html`
      ${name ? html`<h3 class="group">${name}</h3>` : null}
      ${[...batches].sort((one, other) => rank(one) - rank(other)).map(
        (batch) => html`<${Fragment} key=${batch.id}><${Bar} batch=${batch} axis=${axis} reliable=${answer.reliable.words}
            mark=${markOf(batch)} isAsked=${isWhyOf({ batch: batch.id })} />
          ${isWhyOf({ batch: batch.id }) ? html`<${Why} answer=${answer} />` : null}<//>`,
      )}
    `)}
  `;
}

function grouped(batches, by) {
  const sorted = [...batches].sort((one, other) => one.setOut - other.setOut || one.sow - other.sow);
  if (by === "date") {
    return [["", sorted]];
  }
  const groups = new Map();
  sorted.forEach((batch) => groups.set(batch[by], [...(groups.get(batch[by]) ?? []), batch]));
  return [...groups].sort(([one], [other]) => one.localeCompare(other));
}
