// Houses, spaces and rules as forms: each field with its unit, its range and a sentence of help, from the same list as the reader's.
import { Fragment, html, useEffect, useRef, useState } from "./view.js";
import { act, edit, set, store } from "./store.js";
import { Air } from "./air.js";

export function Rules() {
  const { desk, fields } = store;
  if (!desk.isSiteWhole) {
    return html`<p>site.toml cannot be read as it stands. Mend what is listed above in a text editor; this page follows.</p>`;
  }
  const parts = Object.values(fields).filter((each) => each.isOfSite).flatMap(({ section, title, isList }) => {
    const written = desk.sections.filter((each) => each.section === section);
    return isList ? written : [{ section, entry: 0, title, values: written[0]?.values ?? [] }];
  });
  return html`
    <h2>Houses and rules</h2>
    ${parts.map((part, at) => html`<${Fragment} key=${part.section + part.entry}><${Section} part=${part} />
      ${part.section === "house" && parts[at + 1]?.section !== "house" ? html`<${Air} />` : null}<//>`)}
    <${AddSpace} />
    <${AddHouse} />
  `;
}

function Section({ part }) {
  const faults = (store.answer?.faults ?? []).filter((each) => each.section === part.section && each.entry === part.entry);
  const box = useRef(null);
  const { fields, isList, title } = store.fields[part.section];
  const name = isList ? `${title}: ${part.title}` : title;
  const focus = store.focus;
  useEffect(() => {
    if (focus?.section === part.section && focus.entry === part.entry) {
      box.current.open = true;
      (box.current.querySelector(`[name="${focus.key}"]`) ?? box.current.querySelector("summary")).focus();
      set({ focus: null });
    }
  }, [focus]);
  const whole = faults.filter((each) => !each.key || !fields.some((field) => field.name === each.key));
  return html`
    <details class="section" ref=${box}>
      <summary>${name}${faults.length ? html` <span class="flag">${faults.length} to mend</span>` : null}</summary>
      ${whole.map((fault, at) => html`<p key=${at} class="flag">${fault.what}; ${fault.instead}</p>`)}
      <div class="fields">
        ${fields.map((field) => html`<${Field} key=${field.name} part=${part} field=${field}
          fault=${faults.find((each) => each.key === field.name)} />`)}
      </div>
      ${isList && fields.some((field) => field.name === "id")
        ? html`<p><button type="button" onClick=${() => remove(part)}>Take ${part.title} away</button></p>`
        : null}
    </details>
  `;
}

const remove = (part) =>
  edit(`${part.title} taken away`, [{ do: "RemoveEntry", section: part.section, entry: part.entry, was: valueOf(part, "id") }]);

const valueOf = (part, key) => part.values.find((each) => each.key === key)?.value ?? "";

function Field({ part, field, fault }) {
  const value = valueOf(part, field.name);
  const id = `${part.section}-${part.entry}-${field.name}`;
  const [typed, setTyped] = useState(null); // what is being typed, and what stood there when that began
  const keep = (text) => {
    const was = typed?.was ?? value;
    setTyped(null);
    if (text.trim() !== was) {
      edit(`${part.title}: ${field.name} ${text.trim() || "left out"}`, [
        { do: "Key", section: part.section, entry: part.entry, key: field.name, was, value: text.trim() },
      ]);
    }
  };
  const about = { id, name: field.name, "aria-describedby": `${id}-help`, "aria-invalid": fault ? "true" : null };
  return html`
    <div class=${"field" + (fault ? " faulty" : "")}>
      <label for=${id}>${field.name.replaceAll("_", " ")}</label>
      ${field.choices.length
        ? html`<select ...${about} onChange=${(event) => keep(event.currentTarget.value)}>
            <option value="" selected=${value === ""} disabled=${field.isRequired}>${field.isRequired ? "choose" : field.default || "not given"}</option>
            ${field.choices.map((each) => html`<option key=${each} value=${each} selected=${same(each, value)}>${each}</option>`)}
          </select>`
        : html`<input ...${about} type="text" autocomplete="off" value=${typed?.text ?? value} placeholder=${field.default}
            onInput=${(event) => setTyped({ text: event.currentTarget.value, was: typed?.was ?? value })}
            onKeyDown=${(event) => {
              if (event.key === "Enter") {
                keep(event.currentTarget.value);
              } else if (event.key === "Escape") {
                setTyped(null);
              }
            }}
            onBlur=${(event) => keep(event.currentTarget.value)} />`}
      <p class="help" id=${`${id}-help`}>
        ${fault ? html`<span class="flag">${fault.what}; ${fault.instead}. </span>` : null}${field.help}${field.unit ? ` Written in: ${field.unit}.` : ""}
      </p>
    </div>
  `;
}

const same = (choice, value) => choice === value || (choice === "yes" && value === "true") || (choice === "no" && value === "false");

function AddSpace() {
  const houses = store.desk.sections.filter((each) => each.section === "house").map((each) => valueOf(each, "id"));
  return html`<form class="add" onSubmit=${(event) => add(event, "space")}>
    <h3>Add a space</h3>
    <label>Short name <input name="id" required maxlength="40" /></label>
    <label>Kind <select name="kind">${store.fields.space.fields.find((each) => each.name === "kind").choices.map((each) => html`<option>${each}</option>`)}</select></label>
    <label>House <select name="house"><option value="">outdoors</option>${houses.map((each) => html`<option>${each}</option>`)}</select></label>
    <label>Places <input name="places" type="number" min="0" required /></label>
    <button>Add</button>
  </form>`;
}

function AddHouse() {
  return html`<form class="add" onSubmit=${(event) => add(event, "house")}>
    <h3>Add a house</h3>
    <label>Short name <input name="id" required maxlength="40" /></label>
    <label>Night temperature held <input name="night" placeholder="60 F" /></label>
    <button>Add</button>
  </form>`;
}

function add(event, section) {
  event.preventDefault();
  const form = event.currentTarget;
  const values = Object.fromEntries([...new FormData(form)].filter(([, value]) => value !== ""));
  edit(`${values.id} added`, [{ do: "AddEntry", section, values }]).then((isDone) => isDone && form.reset());
}
