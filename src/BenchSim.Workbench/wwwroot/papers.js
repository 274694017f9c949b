// The papers and the case report of the plan that is looked at: made by the server when a link is followed.
import { html, useEffect, useState } from "./view.js";
import { get, store } from "./store.js";

const SHELVES = [
  ["For the bench", ["work-list.html", "labels.pdf"]],
  ["For the desk", ["order.html", "calendar.ics", "workbook.xlsx"]],
  ["The same as tables", ["work-list.csv", "cold-nights.csv", "labels.csv", "order.csv", "to-buy.csv", "columns.csv"]],
];
const TITLES = {
  "work-list.html": "Work list, a page to print",
  "work-list.csv": "Work list",
  "cold-nights.csv": "Cold nights on the hardening table",
  "labels.pdf": "Tray labels (PDF)",
  "labels.csv": "What is on the labels",
  "order.html": "Order of seed, trays and mix, a page to print",
  "order.csv": "Order of seed, trays and mix",
  "to-buy.csv": "What to buy in packs",
  "columns.csv": "What the columns of these tables mean",
  "calendar.ics": "Calendar file",
  "workbook.xlsx": "Workbook for a spreadsheet",
};

export function Papers() {
  const [asked, setAsked] = useState({ grower: "", from: "", to: "", sheet: "" });
  const [made, setMade] = useState(null);
  const [choices, setChoices] = useState({ growers: [], sheets: [], sheet: "" }); // those of the last papers that could be made
  const query = new URLSearchParams(Object.entries(asked).filter(([, value]) => value)).toString();
  const path = "/api/papers" + (query ? "?" + query : "");
  useEffect(() => {
    let isWanted = true;
    get(path).then((found) => {
      if (isWanted) {
        setMade(found);
        setChoices(found && !found.why ? found : { ...choices, sheets: found?.sheets ?? choices.sheets });
      }
    });
    return () => {
      isWanted = false;
    };
  }, [path, store.desk.revision]);
  const choose = (name) => (event) => setAsked({ ...asked, [name]: event.currentTarget.value });
  const address = (file) => `/papers/${file}` + (query ? "?" + query : "");
  const looked = store.desk.tries.find((each) => each.id === store.desk.current);
  return html`
    <h2>Papers and case</h2>
    <p>Made of ${looked ? html`the try “${looked.name}”` : "the files"} as you look at ${looked ? "it" : "them"} now, as the program prints them. Pages open beside this one; the rest is kept where your browser keeps what it fetches.</p>
    <form class="add" onSubmit=${(event) => event.preventDefault()}>
      <label>Grower <select onChange=${choose("grower")}>
        <option value="">all growers</option>
        ${choices.growers.map((name) => html`<option key=${name} value=${name} selected=${asked.grower === name}>${name}</option>`)}
      </select></label>
      <label>From <input type="date" value=${asked.from} onChange=${choose("from")} /></label>
      <label>To <input type="date" value=${asked.to} onChange=${choose("to")} /></label>
      <label>Sheet of labels <select onChange=${choose("sheet")}>
        ${choices.sheets.map(({ name, words }) =>
          html`<option key=${name} value=${name} selected=${(asked.sheet || choices.sheet) === name}>${words}</option>`)}
      </select></label>
    </form>
    <div role="status">${made?.why ? html`<p class="flag">${made.why}</p>` : null}</div>
    ${made && !made.why
      ? html`
          <ul class="said">${made.sentences.map((each, at) => html`<li key=${at}>${each}</li>`)}</ul>
          <div class="shelves">
            ${SHELVES.map(([title, files]) => html`<section key=${title}>
              <h3>${title}</h3>
              <ul>${files.filter((file) => made.files.includes(file)).map((file) => html`<li key=${file}><${Link} file=${file} href=${address(file)} /></li>`)}</ul>
            </section>`)}
            <section>
              <h3>For a grant, a loan or a meeting</h3>
              <ul><li><a href="/papers/case.pdf">Case report (PDF)</a></li></ul>
              <p class="help">Of the whole plan. It plays the seasons first, which takes some seconds. It counts places and days; whether a structure, a heater or a circuit is safe, it does not say.</p>
            </section>
          </div>
        `
      : null}
  `;
}

const Link = ({ file, href }) =>
  file.endsWith(".html")
    ? html`<a href=${href} target="_blank" rel="noopener">${TITLES[file]}<span class="spoken"> (opens beside this page)</span></a>`
    : html`<a href=${href}>${TITLES[file]}</a>`;
