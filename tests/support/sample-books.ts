import type { Books } from "../../src/books/books.ts";
import { fixtureBooks } from "./fixture-books.ts";

/** The same invented books with people of several roles in them. */
export const BOOKS: Books = {
  ...fixtureBooks,
  people: [
    { id: "olga", name: "Olga Owner", role: "owner", language: "en", units: "si", slackUser: "U-OLGA" },
    { id: "teo", name: "Teo Tech", role: "technician", language: "es", units: "us", teamsUser: "29:teo" },
    { id: "dee", name: "Dee Dispatch", role: "dispatcher", language: "en", units: "us" },
  ],
};
