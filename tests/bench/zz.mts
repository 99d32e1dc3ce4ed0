import { benchTeamsEcho } from "./teams-echo.ts";
console.log(JSON.stringify(await benchTeamsEcho(), null, 1)); process.exit(0);
