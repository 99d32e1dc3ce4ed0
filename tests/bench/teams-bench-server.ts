import { CloudAdapter, ConfigurationBotFrameworkAuthentication } from "botbuilder";
import express from "express";
import { openTeamsDoor } from "../../adapters/teams/open-teams-door.ts";
import type { Desk } from "../../src/desk.ts";
import { APP_ID, FakeCredentials, ISSUER, TENANT_ID } from "../teams/fake-platform.ts";

/*
 * One side of the comparison in a process of its own: `door` or `bare`. Both prove who sends and answer in the same
 * conversation. Tells its address; ends when its parent does.
 */
const [, , side, openIdMetadataUrl = ""] = process.argv;

async function openDoor(): Promise<string> {
  const desk: Desk = {
    receive: async ({ text }) => ({
      card: { title: "Echo", summary: `echo ${text}`, blocks: [{ kind: "headline", text: `echo ${text}` }] },
      isRepeat: false,
    }),
  };
  const log = { info: () => {}, warn: () => {}, error: () => {} };
  const settings = { appId: APP_ID, tenantId: TENANT_ID, password: "invented", host: "127.0.0.1", port: 0 };
  const credentials = new FakeCredentials();
  return (await openTeamsDoor({ desk, settings, log, credentials, openIdMetadataUrl })).url;
}

/** The library as its own examples use it: the activity is proved, and its text goes back. */
async function openBare(): Promise<string> {
  const options = {
    MicrosoftAppId: APP_ID,
    ToChannelFromBotLoginUrl: "https://login.microsoftonline.com/botframework.com",
    ToChannelFromBotOAuthScope: ISSUER,
    ToBotFromChannelTokenIssuer: ISSUER,
    OAuthUrl: ISSUER,
    ToBotFromChannelOpenIdMetadataUrl: openIdMetadataUrl,
    ToBotFromEmulatorOpenIdMetadataUrl: openIdMetadataUrl,
    CallerId: "urn:botframework:azure",
  };
  const adapter = new CloudAdapter(new ConfigurationBotFrameworkAuthentication(options, new FakeCredentials()));
  const app = express().use(express.json());
  app.post("/api/messages", (request, response) =>
    adapter.process(request, response, async (context) => {
      await context.sendActivity(`echo ${context.activity.text}`);
    }),
  );
  const server = app.listen(0, "127.0.0.1");
  await new Promise((resolve) => server.on("listening", resolve));
  const address = server.address();
  return `http://127.0.0.1:${typeof address === "object" ? address?.port : address}/api/messages`;
}

process.send?.(await (side === "door" ? openDoor() : openBare()));
process.on("disconnect", () => process.exit(0));
