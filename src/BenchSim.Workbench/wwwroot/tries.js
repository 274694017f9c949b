// The tries as a row of chips, and what one does with the one that is looked at.
import { html, useRef, useState } from "./view.js";
import { act, store } from "./store.js";

export function Tries() {
  const { desk } = store;
  const looked = desk.tries.find((each) => each.id === desk.current);
  return html`
    <section class="tries" aria-label="Tries">
      <ul class="chips">
        <${Chip} id=${0} name="The files" share=${desk.filesShare} />
        ${desk.tries.map((each) => html`<${Chip} key=${each.id} ...${each} />`)}
      </ul>
      <div class="doings">
        <button type="button" disabled=${!desk.undo} title=${desk.undo ?? ""} onClick=${() => act("/api/undo", {}, "Undone: " + desk.undo)}>Undo</button>
        <button type="button" disabled=${!desk.redo} title=${desk.redo ?? ""} onClick=${() => act("/api/redo", {}, "Made again: " + desk.redo)}>Redo</button>
        <button type="button" onClick=${() => act("/api/begin", {}, "A new try")}>New try from here</button>
        ${looked ? html`<${Doings} key=${looked.id} looked=${looked} />` : desk.variants.length ? html`<${Variants} names=${desk.variants} />` : null}
      </div>
      ${desk.trouble ? html`<p class="trouble">${desk.trouble}</p>` : null}
      ${looked?.conflicts.map((file) => html`<${Conflict} key=${file} looked=${looked} file=${file} />`)}
    </section>
  `;
}

function Chip({ id, name, share }) {
  const { answer, desk } = store;
  const isLooked = desk.current === id;
  // The desk is as it was after the last change; the answer knows more since.
  const newest = (answer?.try === id ? answer.chip : id === 0 ? answer?.filesChip : null) ?? share;
  return html`<li>
    <button type="button" class="chip" aria-pressed=${isLooked ? "true" : "false"} onClick=${() => act("/api/look", { id })}>
      ${name}${newest ? html` <span class="share">${newest}</span>` : null}
    </button>
  </li>`;
}

// The variants of the folder, each of which may be begun with.
function Variants({ names }) {
  const take = (event) => {
    event.preventDefault();
    const name = event.currentTarget.elements.taken.value;
    act("/api/variant", { id: 0, name }, `Taken as a try: ${name}`);
  };
  return html`<form onSubmit=${take} class="doings">
    <label>Variant <select name="taken">${names.map((each) => html`<option key=${each} value=${each}>${each}</option>`)}</select></label>
    <button>Try this variant</button>
  </form>`;
}

function Doings({ looked }) {
  const dialog = useRef(null);
  const [asked, setAsked] = useState("put");
  const open = (what) => {
    setAsked(what);
    dialog.current.showModal();
  };
  const done = async (path, body, words) => {
    dialog.current.close();
    await act(path, body, words);
  };
  const files = looked.changed.join(" and ");
  return html`
    <button type="button" disabled=${looked.changed.length === 0} onClick=${() => open("put")}>Put into the files …</button>
    <button type="button" disabled=${looked.changed.length === 0} onClick=${() => open("keep")}>Keep as a variant …</button>
    <button type="button" onClick=${() => open("name")}>Rename …</button>
    <button type="button" onClick=${() => open("drop")}>Let go …</button>
    <dialog ref=${dialog} aria-labelledby="asked">
      ${asked === "put"
        ? html`
            <h2 id="asked">Put “${looked.name}” into the files?</h2>
            <p>It changes ${files}. The text of before is kept in the folder .benchsim/former.</p>
            <p class="doings">
              <button type="button" class="main" onClick=${() => done("/api/put", { id: looked.id }, `Put into ${files}`)}>Put it in</button>
              <button type="button" onClick=${() => dialog.current.close()}>Not now</button>
            </p>
          `
        : asked === "drop"
          ? html`
              <h2 id="asked">Let “${looked.name}” go?</h2>
              <p>Its changes are forgotten. The files stay as they are.</p>
              <p class="doings">
                <button type="button" class="main" onClick=${() => done("/api/drop", { id: looked.id }, `Let go: ${looked.name}`)}>Let it go</button>
                <button type="button" onClick=${() => dialog.current.close()}>Keep it</button>
              </p>
            `
          : asked === "keep"
            ? html`
                <form
                  onSubmit=${(event) => {
                    event.preventDefault();
                    done("/api/keep", { id: looked.id, name: event.currentTarget.elements.variant.value }, "Kept as a variant");
                  }}
                >
                  <h2 id="asked">Keep “${looked.name}” as a variant?</h2>
                  <p>It is written beside the files, for benchsim compare. The files and this try stay as they are.</p>
                  <p><label>Name of the file <input name="variant" maxlength="40" placeholder="more-mats" required /></label></p>
                  <p class="doings">
                    <button class="main">Keep it</button>
                    <button type="button" onClick=${() => dialog.current.close()}>Cancel</button>
                  </p>
                </form>
              `
          : html`
              <form
                onSubmit=${(event) => {
                  event.preventDefault();
                  done("/api/name", { id: looked.id, name: event.currentTarget.elements.name.value }, "Renamed");
                }}
              >
                <h2 id="asked">Rename “${looked.name}”</h2>
                <p><label>Name <input name="name" maxlength="40" defaultValue=${looked.name} required /></label></p>
                <p class="doings">
                  <button class="main">Rename</button>
                  <button type="button" onClick=${() => dialog.current.close()}>Cancel</button>
                </p>
              </form>
            `}
    </dialog>
  `;
}

function Conflict({ looked, file }) {
  const settle = (mine, words) => act("/api/settle", { id: looked.id, name: file, mine }, words);
  return html`<div class="trouble" role="alert">
    <p>${file} was changed outside, in the same lines as in this try. Which stands?</p>
    <p class="doings">
      <button type="button" onClick=${() => settle(true, `Kept ${file} of the try`)}>That of this try</button>
      <button type="button" onClick=${() => settle(false, `Took ${file} from the folder`)}>That of the folder</button>
    </p>
  </div>`;
}
