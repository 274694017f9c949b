// From nothing: ten questions lay a folder down. "Don't know" keeps a default, which stays marked as one.
import { html, useEffect, useState } from "./view.js";
import { act, get, set, store } from "./store.js";

const DAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

export function Welcome() {
  const [units, setUnits] = useState("Imperial");
  const [houses, setHouses] = useState(1);
  const today = new Date();
  const year = today.getMonth() >= 7 ? today.getFullYear() + 1 : today.getFullYear();
  const isImperial = units === "Imperial";
  const say = (imperial, metric) => (isImperial ? imperial : metric);
  const send = (event) => {
    event.preventDefault();
    const form = event.currentTarget.elements;
    const value = (name) => form[name]?.value ?? "";
    const each = Array.from({ length: houses }, (_, at) =>
      Object.fromEntries(["length", "width", "layers", "night", "from", "benchLength", "benchWidth", "trays"].map((name) => [name, value(`${name}${at}`)])));
    const days = DAYS.filter((day) => form[day].checked);
    lay("/api/new", {
      folder: value("folder"), year, units, houses: each, name: value("name"), latitude: value("latitude"),
      lastFrost: value("lastFrost"), lateFrost: value("lateFrost"), coldest: value("coldest"),
      firstSowing: value("firstSowing"), lastOut: value("lastOut"), workDays: days.join(", "),
      mats: value("mats"), matTemperature: value("matTemperature"), chamber: value("chamber"), table: value("table"), cover: value("cover"),
      floor: value("floor"), offMatEarly: value("offMatEarly"), lateDays: value("lateDays"),
    });
  };
  return html`
    <main id="part" class="welcome" tabindex="-1">
      <h1>Does the season fit?</h1>
      <${Before} />
      <p>Answer what you know and leave the rest: an empty field keeps the value shown in it, and stays marked as a default. All of it can be changed later.</p>
      <${Invented} year=${year} />
      <form onSubmit=${send} class="questions">
        <${Question} number="1" words="Which farm is it?">
          <${Text} name="folder" label="Folder for its files" required value="spring" />
          <${Text} name="name" label="Name of the farm" otherwise="Our farm" />
          <${Text} name="latitude" label="Latitude, degrees north" otherwise="44" />
          <label>Measured in <select name="units" onChange=${(event) => setUnits(event.currentTarget.value)}><option value="Imperial">feet and °F</option><option value="Metric">metres and °C</option></select></label>
        <//>
        <${Question} number="2" words="When does it freeze for the last time, and how cold does it get?">
          <${Text} type="date" name="lastFrost" label="Last frost in a usual year" help=${`Don't know: 15 May`} />
          <${Text} type="date" name="lateFrost" label="Last frost in a late year, one in ten" help="Don't know: 30 May" />
          <${Text} name="coldest" label="Coldest night of a usual winter" otherwise=${say("-10 F", "-23 C")} />
        <//>
        <${Question} number="3" words="When is the season, and when do you work?">
          <${Text} type="date" name="firstSowing" label="First sowing" help=${`Don't know: 15 February ${year}`} />
          <${Text} type="date" name="lastOut" label="Last plants out" help=${`Don't know: 15 June ${year}`} />
          <fieldset class="days"><legend>Work days; none ticked means Monday to Saturday</legend>
            ${DAYS.map((day) => html`<label key=${day}><input type="checkbox" name=${day} /> ${day}</label>`)}</fieldset>
        <//>
        <${Question} number="4" words="How many houses are there, and how are they kept?">
          <label>Houses <select onChange=${(event) => setHouses(Number(event.currentTarget.value))}>${[1, 2, 3, 4].map((count) => html`<option>${count}</option>`)}</select></label>
          ${Array.from({ length: houses }, (_, at) => html`<fieldset key=${at}><legend>${at === 0 ? "Main house" : `House ${at + 1}`}</legend>
            <${Text} name=${`length${at}`} label="Length" otherwise=${say("48 ft", "15 m")} />
            <${Text} name=${`width${at}`} label="Width" otherwise=${say("20 ft", "6 m")} />
            <${Choice} name=${`layers${at}`} label="Layers of plastic" choices=${[["2", "two"], ["1", "one"]]} otherwise="two" />
            <${Text} name=${`night${at}`} label="Night temperature really held" otherwise=${at === 0 ? say("60 F", "15 C") : say("50 F", "10 C")} />
            <${Text} type="date" name=${`from${at}`} label="Heated from" help=${at === 0 ? "Don't know: from the first tray on" : "Don't know: 15 March"} />
          </fieldset>`)}
        <//>
        <${Question} number="5" words="What warms the seed?">
          <${Text} name="mats" label="Trays on the heat mats at once; 0 for no mats" otherwise="12" />
          <${Text} name="matTemperature" label="How warm are the mats?" otherwise=${say("75 F", "24 C")} />
          <${Text} name="chamber" label="Trays in a warm closed room; 0 for none" otherwise="0" />
        <//>
        <${Question} number="6" words="How much room is on the benches?">
          ${Array.from({ length: houses }, (_, at) => html`<fieldset key=${at}><legend>${at === 0 ? "Main house" : `House ${at + 1}`}: length and width, or trays</legend>
            <${Text} name=${`benchLength${at}`} label="Length of the benches" otherwise=${at === 0 ? say("24 ft", "7 m") : ""} />
            <${Text} name=${`benchWidth${at}`} label="Width" otherwise=${at === 0 ? say("5 ft", "1.5 m") : ""} />
            <${Text} name=${`trays${at}`} label="Or trays that fit" otherwise=${at === 0 ? "" : "30"} />
          </fieldset>`)}
        <//>
        <${Question} number="7" words="What about the hardening table?">
          <${Text} name="table" label="Trays on it" otherwise="40" />
          <${Choice} name="cover" label="A row cover on cold nights" choices=${[["yes", "yes"], ["no", "no"]]} otherwise="yes" />
        <//>
        <${Question} number="8" words="When all is full, what do you do?">
          <${Text} name="floor" label="Trays that may stand on the floor; 0 for none" otherwise="10" />
          <${Choice} name="offMatEarly" label="Take trays off the mats when half is up" choices=${[["yes", "yes"], ["no", "no"]]} otherwise="yes" />
        <//>
        <${Question} number="9" words="Who grows here?">
          <p class="help">One line of the plan can name its grower: fill in the column “grower” when you paste the plan. Left empty, all is the site's.</p>
        <//>
        <${Question} number="10" words="How late hurts?">
          <${Text} name="lateDays" label="Days late that do not hurt yet" otherwise="7" />
        <//>
        <p><button class="main">Lay the folder down</button></p>
      </form>
      <p class="message trouble" role="alert">${store.message}</p>
    </main>
  `;
}

// The folders that were opened on this computer before, the newest first.
function Before() {
  const { before } = store.desk;
  return before.length
    ? html`<section class="add"><h2>Go on with a folder opened before</h2>
        <ul class="before">${before.map((each) => html`<li key=${each.path}>
          <button type="button" class="link" onClick=${() => act("/api/open", { id: 0, name: each.path }, `Opened: ${each.name}`)}>${each.name}</button> <span class="quiet">${each.path}</span></li>`)}</ul></section>`
    : null;
}

// An invented farm: one of the starters in a climate, or the small example with a comment beside each line.
function Invented({ year }) {
  const [known, setKnown] = useState(null);
  const [farm, setFarm] = useState("");
  const [climate, setClimate] = useState("mild");
  useEffect(() => { get("/api/starters").then(setKnown); }, []);
  const open = (event) => {
    event.preventDefault();
    const value = (name) => event.currentTarget.elements[name].value;
    const name = value("folder");
    farm ? lay("/api/starter", { name, farm, climate, units: value("units"), year }) : lay("/api/example", { id: 0, name });
  };
  const aboutOf = (list, id) => known?.[list].find((each) => each.id === id)?.about;
  return html`
    <form onSubmit=${open} class="add">
      <h2>Or look at an invented farm first</h2>
      <label>Farm <select name="farm" onChange=${(event) => setFarm(event.currentTarget.value)}>
        <option value="">The small example of the files</option>
        ${known?.farms.map((each) => html`<option key=${each.id} value=${each.id}>${each.name}</option>`)}
      </select></label>
      ${farm ? html`
        <label>Climate <select name="climate" onChange=${(event) => setClimate(event.currentTarget.value)}>
          ${known.climates.map((each) => html`<option key=${each.id} value=${each.id} selected=${each.id === climate}>${each.name}</option>`)}
        </select></label>
        <label>Measured in <select name="units"><option value="Imperial">feet and °F</option><option value="Metric">metres and °C</option></select></label>
      ` : null}
      <label>Folder for it <input name="folder" defaultValue="example" required maxlength="60" /></label>
      <button>Open ${farm ? "this farm" : "the example"}</button>
      ${farm ? html`<p class="help">${aboutOf("farms", farm)}. It fits at first; its variant “more” is something to try: <em>Try this variant</em> stands above the season. The climate is invented: ${aboutOf("climates", climate)}.</p>` : null}
    </form>`;
}

const lay = (path, body) => {
  const isEmpty = path.endsWith("new");
  const said = isEmpty ? "Laid down. Now paste or type the plan." : "Laid down. Change anything, and the answer follows.";
  return act(path, body, said).then((isDone) => isDone && set({ part: isEmpty ? "plan" : "sheet" }));
};

const Question = ({ number, words, children }) => html`<section class="question"><h2>${number}. ${words}</h2><div class="fields">${children}</div></section>`;

function Text({ name, label, otherwise = "", help = "", type = "text", required = false, value }) {
  return html`<label class="field">${label}
    <input name=${name} type=${type} defaultValue=${value} placeholder=${otherwise} required=${required} autocomplete="off" maxlength="60" />
    ${help ? html`<span class="help">${help}</span>` : null}</label>`;
}

const Choice = ({ name, label, choices, otherwise }) => html`<label class="field">${label}
  <select name=${name}><option value="">don't know (${otherwise})</option>${choices.map(([value, words]) => html`<option value=${value}>${words}</option>`)}</select></label>`;
