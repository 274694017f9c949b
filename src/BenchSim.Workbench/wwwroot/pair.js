// A phone is paired by the code that the computer shows. The square code brings it behind the # of the address, which is never sent.
const [form, code, name, said, waits] = ["pair", "code", "name", "said", "waits"].map((id) => document.getElementById(id));

if (location.hash) {
  code.value = location.hash.slice(1);
  history.replaceState(null, "", "/");
}

// A phone that was paired before may still have entries to send (log.js).
try {
  const left = JSON.parse(localStorage.getItem("benchsim-waiting"))?.length ?? 0;
  waits.hidden = left === 0;
  waits.textContent = `${left} ${left === 1 ? "entry waits" : "entries wait"} on this phone. Pair it again, and ${left === 1 ? "it is" : "they are"} sent.`;
} catch {
  waits.hidden = true;
}

form.addEventListener("submit", async (event) => {
  event.preventDefault();
  said.textContent = "";
  try {
    const answer = await fetch("/api/pair", {
      method: "POST",
      credentials: "same-origin",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify({ code: code.value, name: name.value }),
    });
    if (answer.ok) {
      location.replace("/");
      return;
    }
    const isJson = answer.headers.get("Content-Type")?.startsWith("application/json");
    said.textContent = isJson ? (await answer.json()).why : await answer.text();
  } catch {
    said.textContent = "The workbench does not answer. Is it still open, and is this phone in the same network?";
  }
  code.select();
});
