// The season under way: what is due, what stands where by the log, and writing down what was done.
import { html, useEffect, useState } from "./view.js";
import { get, set, store } from "./store.js";
import { begin, takeBack, write } from "./log.js";

const MONTHS = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];
const words = (date) => `${Number(date.slice(8))} ${MONTHS[Number(date.slice(5, 7)) - 1]}`;

export function Today() {
  const [asked, setAsked] = useState("");
  const [shown, setShown] = useState(null);
  const [sought, setSought] = useState("");
  const { desk } = store;
  useEffect(begin, []);
  useEffect(() => {
    const wanted = new AbortController();
    get("/api/today" + (asked ? `?day=${asked}` : ""), wanted.signal).then((found) => {
      if (!wanted.signal.aborted && found) {
        setShown(found);
        set({ written: [] });
      }
    });
    return () => wanted.abort();
  }, [asked, desk.revision]);
  if (!shown) {
    return html`<p class="wait">Looking at the benches …</p>`;
  }
  const is = seeker(sought, shown);
  return html`
    <h2>Today</h2>
    <form class="add" onSubmit=${(event) => event.preventDefault()}>
      <label>Day <input type="date" value=${asked || shown.day || ""} min=${shown.first} max=${shown.last}
        onChange=${(event) => setAsked(event.currentTarget.value)} /></label>
      <label>Find a batch by name or code, a crop or a grower <input type="search" value=${sought} onInput=${(event) => setSought(event.currentTarget.value)} /></label>
    </form>
    <div role="status">${store.waiting.length ? html`<p class="flag">${count(store.waiting.length, "entry waits", "entries wait")} to be sent: ${store.waiting.length === 1 ? "it goes" : "they go"} out once the workbench answers. Leave this page open.</p>` : null}</div>
    ${shown.note ? html`<p class="flag">${shown.note}</p>` : null}
    ${shown.cannotWrite ? html`<p class="flag">${shown.cannotWrite}</p>` : null}
    ${shown.day ? html`
      <${Due} benches=${shown} is=${is} />
      <${Coming} benches=${shown} sought=${sought} />
      <h3>What stands where</h3>
      <p class="help">By the log, on ${words(shown.day)}. Walk through a space once a week: what you count there is put right.</p>
      <div class="benches">${shown.spaces.map((space) => html`<${Bench} key=${space.id} space=${space} benches=${shown} is=${is} />`)}</div>
      <${Other} benches=${shown} />
      <${Written} written=${shown.written} />` : null}
  `;
}

// The short code of a label finds its batch alone, with the mark of the grower or without; anything else what holds it.
function seeker(sought, { due, spaces }, coming = []) {
  const text = sought.trim().toLowerCase();
  const isCode = ({ code }) => [code, code.split("/")[0]].some((each) => each.toLowerCase() === text);
  return [...due, ...coming, ...spaces.flatMap((space) => space.stands)].some(isCode)
    ? isCode
    : (each) => [each.batch, each.crop, each.grower].some((name) => name.toLowerCase().includes(text));
}

const Code = ({ of }) => html`<span class="shortcode" title="Short code of the label">${of.code}</span>`;

const count = (number, one, more) => `${number} ${number === 1 ? one : more}`;

function Due({ benches, is }) {
  const due = benches.due.filter(is);
  return html`
    <h3>Due, and not written down</h3>
    ${due.length
      ? html`<ul class="due">${due.map((job) => html`<${Job} key=${`${job.job} ${job.batch} ${job.where} ${job.on}`} job=${job} benches=${benches} />`)}</ul>`
      : html`<p>${benches.due.length ? "Nothing of what you look for." : "Nothing."}</p>`}
  `;
}

// The next days are played when the rest is there, and no sooner than a hand rests.
function Coming({ benches, sought }) {
  const [coming, setComing] = useState(null);
  useEffect(() => {
    const wanted = new AbortController();
    const rest = setTimeout(async () => {
      const found = await get(`/api/coming?day=${benches.day}`, wanted.signal);
      if (!wanted.signal.aborted && found) {
        setComing({ ...found, of: benches });
      }
    }, 400);
    return () => {
      clearTimeout(rest);
      wanted.abort();
    };
  }, [benches]);
  const jobs = coming ? coming.jobs.filter(seeker(sought, benches, coming.jobs)) : [];
  return html`
    <h3>Coming this week</h3>
    <div role="status">${coming?.of === benches ? null : html`<p class="quiet">Playing the next days …</p>`}</div>
    ${coming?.note ? html`<p class="flag">${coming.note}</p>` : null}
    ${coming ? html`<p class="help">Beside what is due. ${coming.words}</p>` : null}
    ${jobs.length
      ? html`<ul class="due coming">${jobs.map((job) => html`<li key=${`${job.job} ${job.batch} ${job.pieces} ${job.way}`}>
          <p><strong>${job.job}: ${job.pieces} of ${job.batch}</strong> <${Code} of=${job} /> <span class="quiet">${job.crop}, ${job.grower}${job.way ? `, ${job.way}` : ""}</span></p>
          <p><strong>${job.word}</strong>, ${job.when}</p></li>`)}</ul>`
      : coming ? html`<p>${coming.jobs.length ? "Nothing of what you look for." : "Nothing."}</p>` : null}
  `;
}

function Job({ job, benches }) {
  const [isOther, setOther] = useState(false);
  const said = `${job.job}: ${job.pieces} of ${job.batch}`;
  const cannot = Boolean(benches.cannotWrite);
  const isIn = ({ rows }) => rows.some((row) => ["batch", "what", "from"].every((each) => row[each] === job.row[each]));
  const onItsWay = store.waiting.some(isIn) ? "Waits to be sent." : store.written.some(isIn) ? "Written down." : null;
  const late = job.late > 0 ? `${count(job.late, "day", "days")} ago` : "today";
  const keep = (event) => {
    event.preventDefault();
    const filled = Object.fromEntries([...new FormData(event.currentTarget)].map(([column, value]) => [column, String(value).trim()]));
    setOther(false);
    write(`${job.job} ${job.batch}`, [{ ...job.row, ...filled }]);
  };
  return html`<li>
    <p><strong>${job.job}: ${job.pieces} of ${job.batch}</strong> <${Code} of=${job} /> <span class="quiet">${job.crop}, ${job.grower}${job.where ? `, in ${job.where}` : ""}; due ${words(job.on)}, ${late}</span></p>
    ${onItsWay ? html`<p class="quiet">${onItsWay}</p>` : html`<p class="doings">
      <button type="button" class="main" disabled=${cannot} onClick=${() => write(said, [job.row])}>Done as planned<span class="spoken"> “${said}”</span></button>
      <button type="button" disabled=${cannot} aria-expanded=${isOther ? "true" : "false"} onClick=${() => setOther(!isOther)}>Otherwise<span class="spoken"> “${said}”</span></button>
    </p>`}
    ${isOther ? html`<form class="add" onSubmit=${keep}>
      ${["flats", "trays"].filter((column) => job.row[column] !== undefined).map((column) => html`<label key=${column}>${column}
        <input name=${column} type="number" inputmode="numeric" min="0" required defaultValue=${job.row[column]} /></label>`)}
      ${job.row.space === undefined ? null : html`<label>to <${Spaces} name="space" benches=${benches} chosen=${job.row.space} /></label>`}
      <label>on <input name="date" type="date" required defaultValue=${job.row.date} min=${benches.first} max=${benches.day} /></label>
      <label>note <input name="note" maxlength="200" /></label>
      <button>Write down</button>
    </form>` : null}
  </li>`;
}

const Spaces = ({ name, benches, chosen, none }) => html`<select name=${name}>
  ${none === undefined ? null : html`<option value="">${none}</option>`}
  ${benches.spaces.map((each) => html`<option key=${each.id} value=${each.id} selected=${each.id === chosen}>${each.name}</option>`)}
</select>`;

function Bench({ space, benches, is }) {
  const [isWalked, setWalked] = useState(false);
  const stands = space.stands.filter(is);
  const free = space.places - space.held;
  const walk = (event) => {
    event.preventDefault();
    const found = new FormData(event.currentTarget);
    const rows = space.stands.flatMap((each, at) =>
      ["trays", "flats"]
        .filter((kind) => each[kind] > 0)
        .map((kind) => ({ kind, each, number: String(found.get(`${kind} ${at}`)).trim() }))
        .map(({ kind, each, number }) => ({ date: benches.day, batch: each.batch, what: "counted", [kind]: number, space: space.id })),
    );
    setWalked(false);
    write(`Walked through ${space.name}`, [...rows, { date: benches.day, what: "walked", space: space.id }]);
  };
  return html`<section class="benchbox" aria-label=${space.name}>
    <h4>${space.name} <span class="quiet">${space.held} of ${count(space.places, "place", "places")} held, ${free < 0 ? `${-free} too many` : `${free} free`}</span></h4>
    ${isWalked
      ? html`<form onSubmit=${walk}>
          ${space.stands.flatMap((each, at) => ["trays", "flats"].filter((kind) => each[kind] > 0).map((kind) => html`<p key=${`${kind} ${at}`}>
            <label><input name=${`${kind} ${at}`} type="number" inputmode="numeric" min="0" required defaultValue=${each[kind]} /> ${kind} of ${each.batch}</label> <${Code} of=${each} />
            <span class="quiet">${each.crop}</span></p>`))}
          <p class="help">What stands here and is not in this list, write below under “Something else”: counted.</p>
          <p class="doings"><button class="main">That is all that stands here</button>
            <button type="button" onClick=${() => setWalked(false)}>Not now</button></p>
        </form>`
      : html`
          ${stands.length ? html`<ul>${stands.map((each) => html`<${Standing} key=${each.batch} each=${each} space=${space} benches=${benches} />`)}</ul>`
            : html`<p class="quiet">${space.stands.length ? "Nothing of what you look for." : "Nothing."}</p>`}
          <p><button type="button" disabled=${Boolean(benches.cannotWrite)} onClick=${() => setWalked(true)}>Walk through<span class="spoken"> ${space.name}</span></button></p>`}
  </section>`;
}

// Whoever chooses the trays counts bad ones, and such counts teach nothing of the crop. So the trays are drawn.
function Standing({ each, space, benches }) {
  const [isCounted, setCounted] = useState(false);
  const { lot } = each;
  const pieces = [each.trays ? count(each.trays, "tray", "trays") : "", each.flats ? count(each.flats, "flat", "flats") : ""].filter(Boolean).join(" and ");
  const keep = (event) => {
    event.preventDefault();
    const found = Number(new FormData(event.currentTarget).get("found"));
    setCounted(false);
    write(`Counted by lot ${each.batch}`, [{
      date: benches.day, batch: each.batch, what: lot.what, space: space.id, count: String(lot.areCells ? lot.of - found : found), of: String(lot.of), note: lot.note,
    }]);
  };
  return html`<li>${each.batch} <${Code} of=${each} /> <span class="quiet">${each.crop}, ${each.grower}</span>: ${pieces}
    ${lot ? html` <button type="button" class="link" disabled=${Boolean(benches.cannotWrite)} aria-expanded=${isCounted ? "true" : "false"}
      onClick=${() => setCounted(!isCounted)}>Count by lot<span class="spoken"> “${each.batch}” in ${space.name}</span></button>` : null}
    ${isCounted ? html`<form class="add" onSubmit=${keep}>
      <p>${lot.words}</p>
      <label>${lot.areCells ? `empty cells, of ${lot.of}` : `seedlings up, of ${lot.of} seeds`}
        <input name="found" type="number" inputmode="numeric" min="0" max=${lot.of} required /></label>
      <button>Write down</button>
    </form>` : null}</li>`;
}

function Other({ benches }) {
  const fields = store.fields["log.csv"].fields;
  const help = (column) => fields.find((each) => each.name === column)?.help ?? "";
  const keep = (event) => {
    event.preventDefault();
    const form = event.currentTarget;
    const row = Object.fromEntries([...new FormData(form)].map(([column, value]) => [column, String(value).trim()]).filter(([, value]) => value !== ""));
    write([row.what, row.batch ?? row.space].filter(Boolean).join(" "), [row]);
    form.reset();
  };
  const number = (column) => html`<label>${column} <input name=${column} type="number" inputmode="decimal" step="any" title=${help(column)} /></label>`;
  return html`<form class="add" onSubmit=${keep}>
    <h3>Something else</h3>
    <label>what <select name="what" required>
      <option value="">choose</option>
      ${fields.find((each) => each.name === "what").choices.map((each) => html`<option key=${each}>${each}</option>`)}</select></label>
    <label>batch <input name="batch" list="batches" autocomplete="off" maxlength="60" /></label>
    <datalist id="batches">${benches.batches.map((each) => html`<option key=${each} value=${each} />`)}</datalist>
    ${number("trays")} ${number("flats")}
    <label>from <${Spaces} name="from" benches=${benches} none="plain" /></label>
    <label>to or in <${Spaces} name="space" benches=${benches} none="none" /></label>
    <label>count <input name="count" list="words" autocomplete="off" maxlength="20" title=${help("count")} /></label>
    <datalist id="words">${benches.words.map((each) => html`<option key=${each} value=${each} />`)}</datalist>
    ${number("of")}
    <label>by <input name="by" maxlength="60" /></label>
    <label>note <input name="note" maxlength="200" /></label>
    <label>on <input name="date" type="date" required value=${benches.day} min=${benches.first} max=${benches.day} /></label>
    <button disabled=${Boolean(benches.cannotWrite)}>Write down</button>
  </form>`;
}

const Written = ({ written }) =>
  written.length
    ? html`<h3>Written down here last</h3>
        <ul class="due written">${written.map((each) => html`<li key=${each.id}><p>${each.said} <span class="quiet">${each.lines.length === 1 ? each.lines[0] : count(each.lines.length, "line", "lines")}</span>
          <button type="button" onClick=${() => takeBack(each)}>Take back<span class="spoken"> “${each.said}”</span></button></p></li>`)}</ul>`
    : null;
