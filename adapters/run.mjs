// What `npm start` and the other commands run.
import { loadSource } from "./load-source.mjs";

await loadSource("main");
