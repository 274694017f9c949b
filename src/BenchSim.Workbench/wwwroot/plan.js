// The plan as a grid: one input, one tab stop, cells to type over, paste into, fill down and copy from.
import { html, useEffect, useLayoutEffect, useMemo, useRef, useState } from "./view.js";
import { edit, say, set, store } from "./store.js";
import { Cell } from "./cell.js";
import { headOf, parseTable, toTable } from "./paste.js";

// What the lines may be put in the order of, beside that of the file.
const ORDERS = ["id", "crop", "variety", "grower", "sow", "set_out"];

export function Plan() {
  const { desk, answer, fields, focus } = store;
  const [chosen, setAt] = useState({ row: 0, column: 0 });
  const [to, setTo] = useState(null); // the other end of what is marked
  const [typed, setTyped] = useState(null); // what is being typed over the cell, and what stood there when that began
  const [filter, setFilter] = useState("");
  const [order, setOrder] = useState("");
  const grid = useRef(null);
  const wantsFocus = useRef(false);
  const plan = desk.plan;
  // Lines stay where they are shown while they are changed; they are looked through anew when there are more or fewer of them.
  const shown = useMemo(() => (plan ? linesOf(plan, filter, order, answer) : []), [filter, order, plan?.rows.length, desk.current]);
  useEffect(() => {
    if (focus && plan && focus.row !== null && focus.row !== undefined) {
      setFilter("");
      goTo(focus.row, Math.max(0, plan.columns.indexOf(focus.cell)));
      set({ focus: null });
    }
  }, [focus]);
  useLayoutEffect(() => {
    if (wantsFocus.current) {
      wantsFocus.current = false;
      grid.current?.querySelector('[tabindex="0"]')?.focus();
    }
  });
  if (!plan || plan.columns.length === 0) {
    return html`<p>There is no plan.csv that can be shown here. See what is listed above.</p>`;
  }
  const { columns, rows } = plan;
  // The row behind the last is the one in which a new line begins.
  const at = shown.includes(chosen.row) ? chosen : { row: chosen.row < rows.length && shown.length ? shown[0] : rows.length, column: chosen.column };
  const about = Object.fromEntries(fields["plan.csv"].fields.map((each) => [each.name, each]));
  const faults = (answer?.faults ?? []).filter((each) => each.file.startsWith("plan.") && each.row !== null);
  const faultOf = (row, column) => faults.filter((each) => each.row === row && (each.cell ?? columns[0]) === column);
  const valueOf = (row, column) => rows[row]?.[column] ?? "";
  const marked = to ? span(at, to, shown) : null;

  function goTo(row, column) {
    wantsFocus.current = true;
    setTo(null);
    setAt({ row: Math.min(Math.max(0, row), rows.length), column: Math.min(Math.max(0, column), columns.length - 1) });
  }

  const type = (text) => setTyped({ text, was: valueOf(at.row, at.column) });
  const put = (row, column, was, value) =>
    row < rows.length
      ? was === value ? null : edit(`${valueOf(row, columns.indexOf("id")) || "row " + (row + 1)}: ${columns[column]} ${value || "emptied"}`, [
          { do: "Cell", row, column: columns[column], was, value },
        ])
      : value === "" ? null : add(edit("A line added", [{ do: "AddRow", row, values: { [columns[column]]: value } }]));

  // A new line shows, whatever is looked for.
  const add = (edited) => {
    setFilter("");
    return edited;
  };

  const step = (rowStep, columnStep) => {
    const order = [...shown, rows.length];
    const place = Math.max(0, order.indexOf(at.row));
    goTo(order[Math.min(order.length - 1, Math.max(0, place + rowStep))], at.column + columnStep);
  };

  const finish = (value, rowStep, columnStep) => {
    setTyped(null);
    put(at.row, at.column, typed.was, value.trim());
    step(rowStep, columnStep);
  };

  const keys = (event) => {
    if (typed !== null) {
      return;
    }
    const moves = { ArrowUp: [-1, 0], ArrowDown: [1, 0], ArrowLeft: [0, -1], ArrowRight: [0, 1], PageUp: [-15, 0], PageDown: [15, 0] }[event.key];
    const isControl = event.ctrlKey || event.metaKey;
    if (moves && event.shiftKey) {
      const end = to ?? at;
      const place = Math.min(shown.length - 1, Math.max(0, shown.indexOf(end.row) + moves[0]));
      setTo({ row: shown[place] ?? end.row, column: Math.min(columns.length - 1, Math.max(0, end.column + moves[1])) });
    } else if (moves) {
      step(...moves);
    } else if (event.key === "Home" || event.key === "End") {
      goTo(isControl ? shown.at(event.key === "Home" ? 0 : -1) ?? at.row : at.row, event.key === "Home" ? 0 : columns.length - 1);
    } else if (event.key === "Enter" || event.key === "F2") {
      type(valueOf(at.row, at.column));
    } else if (event.key === "Delete" || event.key === "Backspace") {
      clear();
    } else if (isControl && event.key.toLowerCase() === "d") {
      fillDown();
    } else if (event.key === "Escape") {
      setTo(null);
    } else if (event.key.length === 1 && !isControl && !event.altKey) {
      type(event.key);
    } else {
      return;
    }
    event.preventDefault();
  };

  const cellsOf = (area) => area.rows.flatMap((row) => area.columns.map((column) => [row, column]));
  const clear = () => {
    const area = marked ?? { rows: at.row < rows.length ? [at.row] : [], columns: [at.column] };
    edit(area.rows.length > 1 || area.columns.length > 1 ? "Cells emptied" : `${columns[at.column]} emptied`,
      cellsOf(area).filter(([row, column]) => valueOf(row, column) !== "")
        .map(([row, column]) => ({ do: "Cell", row, column: columns[column], was: valueOf(row, column), value: "" })));
  };
  const fillDown = () => {
    const area = marked;
    if (area && area.rows.length > 1) {
      edit("Filled down", area.rows.slice(1).flatMap((row) => area.columns
        .filter((column) => valueOf(row, column) !== valueOf(area.rows[0], column))
        .map((column) => ({ do: "Cell", row, column: columns[column], was: valueOf(row, column), value: valueOf(area.rows[0], column) }))));
    } else {
      say("Mark cells with Shift and the arrow keys first; the topmost is filled into those below.");
    }
  };
  const copy = (event) => {
    if (typed === null) {
      const area = marked ?? { rows: [at.row], columns: [at.column] };
      event.clipboardData.setData("text/plain", toTable(area.rows.map((row) => area.columns.map((column) => valueOf(row, column)))));
      event.preventDefault();
    }
  };
  const paste = (event) => {
    if (typed !== null) {
      return;
    }
    event.preventDefault();
    const pasted = parseTable(event.clipboardData.getData("text/plain"));
    const names = headOf(pasted[0], fields["plan.csv"].fields);
    const lines = names ? pasted.slice(1) : pasted;
    const target = (offset) => (names ? names[offset] : columns[at.column + offset]);
    // Into the lines as they are shown, and behind the last one of the file.
    const places = at.row < rows.length ? shown.slice(shown.indexOf(at.row)) : [];
    const changes = lines.flatMap((cells, line) => {
      const row = places[line] ?? rows.length + line - places.length;
      const values = cells.map((text, offset) => [target(offset), text]).filter(([column]) => column);
      return row < rows.length
        ? values.filter(([column, value]) => valueOf(row, columns.indexOf(column)) !== value)
            .map(([column, value]) => ({ do: "Cell", row, column, was: valueOf(row, columns.indexOf(column)), value }))
        : [{ do: "AddRow", row, values: Object.fromEntries(values.filter(([, value]) => value !== "")) }];
    });
    const edited = edit(`${lines.length} ${lines.length === 1 ? "row" : "rows"} pasted`, changes);
    if (lines.length > places.length) {
      add(edited);
    }
  };
  const removeRow = (row) => {
    edit(`${valueOf(row, columns.indexOf("id")) || "A line"} taken out`, [{ do: "RemoveRow", row, was: columns.includes("id") ? valueOf(row, columns.indexOf("id")) : undefined }]);
    const next = shown[shown.indexOf(row) + 1] ?? shown[shown.indexOf(row) - 1] ?? row;
    goTo(next > row ? next - 1 : next, at.column);
  };
  const field = about[columns[at.column]];
  const here = faultOf(at.row, columns[at.column]);
  return html`
    <div class="rowhead"><h2>Plan</h2>
      <label>Show lines with <input type="search" value=${filter} onInput=${(event) => setFilter(event.currentTarget.value)} /></label>
      <label>in order of <select onChange=${(event) => setOrder(event.currentTarget.value)}>
        <option value="" selected=${order === ""}>the file</option>
        ${ORDERS.filter((each) => columns.includes(each)).map((each) => html`<option key=${each} value=${each} selected=${order === each}>${each.replaceAll("_", " ")}</option>`)}
      </select></label>
      <button type="button" disabled=${at.row >= rows.length} onClick=${() => removeRow(at.row)}>Take out line ${at.row + 1}</button>
    </div>
    ${desk.planNote ? html`<p class="trouble">${desk.planNote}</p>` : null}
    <p class="help" id="cellhelp">
      ${here.length ? html`<span class="flag">${here.map((each) => `${each.what}; ${each.instead}.`).join(" ")} </span>` : null}
      <strong>${columns[at.column]}</strong>${field ? `: ${field.help}` : ""}
    </p>
    <p class="quiet">Paste from a spreadsheet, with or without its heading. Type over a cell, Enter to keep it, Ctrl+D fills down, Delete empties.</p>
    <div class="scroll">
      <table class="grid" role="grid" aria-label="Plan" aria-rowcount=${rows.length + 2} aria-colcount=${columns.length} ref=${grid}
        onKeyDown=${keys} onPaste=${paste} onCopy=${copy}>
        <thead><tr role="row"><th scope="col" role="columnheader">Line</th>${columns.map((each) => html`<th key=${each} scope="col" role="columnheader">${each.replaceAll("_", " ")}</th>`)}</tr></thead>
        <tbody>
          ${[...shown, rows.length].map((row) => html`<tr key=${row} role="row" class=${row === rows.length ? "new" : ""}>
            <th scope="row" role="rowheader">${row === rows.length ? "new" : row + 1}</th>
            ${columns.map((name, column) => {
              const isHere = at.row === row && at.column === column;
              const bad = faultOf(row, name);
              const isMarked = marked?.rows.includes(row) && marked.columns.includes(column);
              return html`<td key=${name} role="gridcell" tabindex=${isHere ? 0 : -1} class=${bad.length ? "faulty" : ""}
                aria-selected=${isMarked ? "true" : "false"} aria-invalid=${bad.length ? "true" : null} aria-describedby=${isHere ? "cellhelp" : null}
                title=${bad.length ? bad.map((each) => `${each.what}; ${each.instead}`).join("\n") : null}
                onClick=${(event) => (event.shiftKey && row < rows.length ? setTo({ row, column }) : goTo(row, column))}
                onDblClick=${() => type(valueOf(row, column))}>
                ${isHere && typed !== null
                  ? html`<${Cell} text=${typed.text} label=${`${name}, line ${row + 1}`} choices=${about[name]?.choices ?? []} finish=${finish} leave=${() => { setTyped(null); goTo(row, column); }} />`
                  : valueOf(row, column)}
              </td>`;
            })}
          </tr>`)}
        </tbody>
      </table>
    </div>
  `;
}

/** The rows that hold a text, in an order: dates as the program read them, where it has. */
function linesOf({ columns, rows }, filter, order, answer) {
  const wanted = filter.toLowerCase();
  const found = rows.map((_, row) => row).filter((row) => !wanted || rows[row].some((cell) => cell.toLowerCase().includes(wanted)));
  if (order === "") {
    return found;
  }
  const lines = new Map((answer?.batches ?? []).map(({ row, line }) => [row, { sow: line.sow.date, set_out: line.setOut.date }]));
  const word = (row) => lines.get(row)?.[order] ?? rows[row][columns.indexOf(order)];
  return found.sort((one, other) => word(one).localeCompare(word(other)));
}

// The rows and columns between two cells, as they are shown.
function span(one, other, shown) {
  const [top, bottom] = [shown.indexOf(one.row), shown.indexOf(other.row)].sort((here, there) => here - there);
  const [left, right] = [Math.min(one.column, other.column), Math.max(one.column, other.column)];
  return {
    rows: top < 0 ? [] : shown.slice(top, bottom + 1),
    columns: Array.from({ length: right - left + 1 }, (_, at) => left + at),
  };
}
