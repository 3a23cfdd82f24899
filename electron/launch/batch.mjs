import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { buildWhatIsStale } from "./build.mjs";
import { installWhatIsMissing, projectFolder } from "./install.mjs";

installWhatIsMissing();
await buildWhatIsStale();
await import(pathToFileURL(join(projectFolder, ".build", "app", "batch.mjs")).href);
