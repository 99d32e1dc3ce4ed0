import { readFile } from "node:fs/promises";
import { resolve } from "node:path";
import type { TeamsDoorSettings } from "../src/boundary/settings-teams.ts";
import type { TeamsSettings } from "./teams/settings.ts";

/** The settings of the Teams door with its certificate's key, which stands in a file told from `root`. */
export async function readTeamsAccess(settings: TeamsDoorSettings, root: string): Promise<TeamsSettings> {
  const { certificate, warnings: _, ownTenant: __, ...rest } = settings;
  const read = certificate && {
    thumbprint: certificate.thumbprint,
    privateKey: await readFile(resolve(root, certificate.keyFile), "utf8"),
  };
  return { ...rest, certificate: read };
}
