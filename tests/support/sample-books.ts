import type { Books } from "../../src/books/books.ts";

/** Small invented books for tests that need people with roles. */
export const BOOKS: Books = {
  company: {
    name: "Plain Pipes",
    isInvented: true,
    town: "Nowhere",
    timeZone: "America/Chicago",
    language: "en",
    units: "us",
  },
  people: [
    { id: "olga", name: "Olga Owner", role: "owner", language: "en", units: "si", slackUser: "U-OLGA" },
    { id: "teo", name: "Teo Tech", role: "technician", language: "es", units: "us", teamsUser: "29:teo" },
    { id: "dee", name: "Dee Dispatch", role: "dispatcher", language: "en", units: "us" },
  ],
};
