// The phones that are let in: the code by which one is paired, and the list from which one is taken away.
import { html, useEffect, useState } from "./view.js";
import { act, get, store } from "./store.js";

export function Phones() {
  const [shown, setShown] = useState(null);
  const [asked, again] = useState(0);
  useEffect(() => {
    let isWanted = true;
    let runsOut = null;
    get("/api/phones").then((found) => {
      if (isWanted && found) {
        setShown(found);
        runsOut = found.code ? setTimeout(() => again((count) => count + 1), found.seconds * 1000) : null;
      }
    });
    return () => {
      isWanted = false;
      clearTimeout(runsOut);
    };
  }, [store.phones, asked]);
  if (!shown) {
    return html`<p class="wait">Looking for the phones …</p>`;
  }
  return html`
    <h2>Phones</h2>
    <p>A paired phone sees the verdict of the files and the part Today, and writes into the log. It cannot change the plan or the houses, nor see or print papers.</p>
    <p class="flag">What it sends and sees is not encrypted: whoever is in the same network can read it. Use a network of your own.</p>
    <h3>Pair a phone</h3>
    <div role="status">${shown.code
      ? html`<p>Code: <strong class="code">${shown.code.slice(0, 3)} ${shown.code.slice(3)}</strong>. It is good once, for ${minutes(shown.seconds)}.</p>`
      : html`<p>No code is good now.</p>`}</div>
    <p class="doings"><button type="button" class=${shown.code ? "" : "main"} onClick=${() => act("/api/phones/code", {}, "A new code")}>New code</button></p>
    <div class="shelves">${shown.addresses.map((each) => html`<section key=${each.address}>
      <p>On the phone open <strong>${each.address}</strong>${shown.code ? " and type the code, or point its camera here:" : "."}</p>
      ${each.path ? html`<svg class="square" role="img" aria-label="Square code of the address and the code" viewBox="0 0 ${each.side} ${each.side}"><rect width="100%" height="100%" /><path d=${each.path} /></svg>` : null}
    </section>`)}</div>
    <h3>Paired phones</h3>
    ${shown.phones.length
      ? html`<ul class="due">${shown.phones.map((each) => html`<li key=${each.id}><p>${each.name} <span class="quiet">paired ${each.on}</span>
          <button type="button" onClick=${() => act("/api/phones/remove", { id: each.id }, `Removed: ${each.name}`)}>Remove<span class="spoken"> “${each.name}”</span></button></p></li>`)}</ul>`
      : html`<p>None.</p>`}
  `;
}

const minutes = (seconds) => (seconds > 60 ? `${Math.ceil(seconds / 60)} minutes more` : "less than a minute more");
