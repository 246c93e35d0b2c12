// The workbook of this device: one for all that is on the page.

import { Workbook } from "./book.js";
import { exchange, read, readAll, remove } from "./store.js";

export const workbook = new Workbook({ exchange, read, readAll, remove });
