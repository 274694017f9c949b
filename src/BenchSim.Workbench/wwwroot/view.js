// Preact and htm, put together once.
import { Fragment, h, render } from "./vendor/preact.js";
import htm from "./vendor/htm.js";

export { Fragment, render };
export { useEffect, useLayoutEffect, useMemo, useRef, useState } from "./vendor/hooks.js";
export const html = htm.bind(h);
