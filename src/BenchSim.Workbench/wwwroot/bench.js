// The page: the verdict above, one part below it.
import { html, render, useEffect, useState } from "./view.js";
import { act, set, start, store, watch } from "./store.js";
import { Verdict } from "./verdict.js";
import { Tries } from "./tries.js";
import { Sheet } from "./sheet.js";
import { Plan } from "./plan.js";
import { Rules } from "./rules.js";
import { Mend } from "./mend.js";
import { Agree } from "./agree.js";
import { Papers } from "./papers.js";
import { Phones } from "./phones.js";
import { Today } from "./today.js";
import { Trust } from "./trust.js";
import { Welcome } from "./welcome.js";

const PARTS = [
  ["sheet", "Season", Sheet],
  ["plan", "Plan", Plan],
  ["rules", "Houses and rules", Rules],
  ["mend", "What would mend it", Mend],
  ["trust", "How sure it is", Trust],
  ["today", "Today", Today],
  ["agree", "Agree and review", Agree],
  ["papers", "Papers and case", Papers],
];
const ALL_PARTS = [...PARTS, ["phones", "Phones", Phones]];

function Bench() {
  const [, again] = useState(0);
  useEffect(() => watch(() => again((count) => count + 1)), []);
  useEffect(() => {
    document.addEventListener("keydown", undoByKeys);
    return () => document.removeEventListener("keydown", undoByKeys);
  }, []);
  if (!store.desk) {
    return html`<p class="wait">Reading the folder …</p>`;
  }
  if (!store.desk.folder) {
    return html`<${Welcome} />`;
  }
  if (store.desk.isPhone) {
    return html`
      <header class="top phone"><${Verdict} />${store.desk.trouble ? html`<p class="trouble">${store.desk.trouble}</p>` : null}</header>
      <main id="part"><${Today} /></main>
    `;
  }
  const parts = store.desk.hasPhones ? ALL_PARTS : PARTS;
  const [, , Part] = parts.find(([id]) => id === store.part);
  return html`
    <a class="skip" href="#part">To the part below the verdict</a>
    <header class="top">
      <${Verdict} />
      <${Tries} />
      <nav aria-label="Parts">
        <ul>
          ${parts.map(
            ([id, name]) => html`<li key=${id}>
              <button type="button" class="part" aria-current=${store.part === id ? "page" : null} onClick=${() => set({ part: id })}>
                ${name}
              </button>
            </li>`,
          )}
        </ul>
      </nav>
    </header>
    <main id="part" tabindex="-1"><${Part} /></main>
  `;
}

// In a field the browser's own undo holds.
function undoByKeys(event) {
  const isTyping = event.target.closest?.("input, select, textarea");
  if ((event.ctrlKey || event.metaKey) && !event.altKey && !isTyping) {
    const key = event.key.toLowerCase();
    const isRedo = key === "y" || (key === "z" && event.shiftKey);
    if (isRedo || key === "z") {
      event.preventDefault();
      act(isRedo ? "/api/redo" : "/api/undo", {}, isRedo ? "Made again" : "Undone");
    }
  }
}

render(html`<${Bench} />`, document.getElementById("bench"));
start();
