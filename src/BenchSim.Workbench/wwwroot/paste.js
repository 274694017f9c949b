// Tables as spreadsheets put them on the clipboard. What a cell holds is read by the program alone.

/**
 * The cells of a table: tabs between cells, quoted where a cell holds a tab, a line end or a quotation mark. Blank rows at the end go.
 * @param {string} text What was on the clipboard.
 * @returns {string[][]}
 */
export function parseTable(text) {
  const rows = [[""]];
  let isQuoted = false;
  for (let at = 0; at < text.length; at++) {
    const letter = text[at];
    const row = rows.at(-1);
    if (isQuoted && letter === '"' && text[at + 1] === '"') {
      row[row.length - 1] += '"';
      at++;
    } else if (isQuoted) {
      if (letter === '"') {
        isQuoted = false;
      } else {
        row[row.length - 1] += letter;
      }
    } else if (letter === '"' && row.at(-1) === "") {
      isQuoted = true;
    } else if (letter === "\t") {
      row.push("");
    } else if (letter === "\n" || letter === "\r") {
      at += letter === "\r" && text[at + 1] === "\n" ? 1 : 0;
      rows.push([""]);
    } else {
      row[row.length - 1] += letter;
    }
  }
  while (rows.length && rows.at(-1).every((cell) => cell.trim() === "")) {
    rows.pop();
  }
  return rows;
}

/** The text of a table for the clipboard. */
export const toTable = (rows) =>
  rows.map((cells) => cells.map((cell) => (/[\t\n\r"]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join("\t")).join("\n");

/**
 * The columns that a first row names, so that it says where the others go; null where it names fewer than two, which may be chance.
 * @param {string[]} [cells] The first row.
 * @param {{name: string}[]} fields The columns there may be.
 * @returns {?(?string)[]}
 */
export function headOf(cells, fields) {
  const names = cells?.map((cell) => {
    const plain = cell.trim().toLowerCase().replaceAll(/[ -]/g, "_");
    return fields.find((field) => field.name === plain)?.name ?? null;
  });
  return names && names.filter(Boolean).length >= 2 ? names : null;
}
