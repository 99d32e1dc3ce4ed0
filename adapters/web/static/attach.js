import { problemOf, saySize } from "./check-file.js";
import { showChips, smallKey } from "./chips.js";
import { find } from "./find.js";
import { newId } from "./log-store.js";
import { shrinkPicture } from "./shrink-picture.js";
import { wordWith } from "./words.js";

/**
 * The files that go with the next message: chosen, taken, dropped or pasted, kept over a reload like the words.
 * @typedef {import("./log-store.js").ChosenFile} ChosenFile
 * @typedef {ReturnType<typeof openAttach>} Attach
 */

const DRAFT_FILES = "oldhand.draft-files";
const LONGEST_NAME = 120;

/**
 * @param {import("./log-store.js").LogStore} store
 * @param {import("./blob-store.js").BlobStore} blobs
 * @param {(text: string) => void} announce
 */
export function openAttach(store, blobs, announce) {
  const place = document.getElementById("attach");
  const most_bytes = Number(place?.dataset["mostBytes"] ?? 0);
  const mostFiles = Number(place?.dataset["mostFiles"] ?? 0);
  /** @returns {ChosenFile[]} */
  const chosen = () => JSON.parse(store.get(DRAFT_FILES) ?? "[]");
  /** @param {readonly ChosenFile[]} files @param {readonly string[]} problems */
  const put = (files, problems = []) => {
    store.set(DRAFT_FILES, JSON.stringify(files));
    showTray(files, problems, blobs);
  };

  /** @param {readonly File[]} files */
  const add = async (files) => {
    /** @type {string[]} */
    const problems = [];
    for (const file of files) {
      const problem = await problemOf(file, most_bytes);
      const values = { name: file.name, size: saySize(file.size), most: saySize(most_bytes) };
      if (problem) problems.push(wordWith(problem, values));
      else if (chosen().length < mostFiles) {
        const kept = await keepFile(file, blobs);
        put([...chosen(), kept]);
      } else if (!problems.includes(wordWith("filesMany", { n: mostFiles })))
        problems.push(wordWith("filesMany", { n: mostFiles }));
    }
    put(chosen(), problems);
    announce(problems.length > 0 ? problems.join(" ") : totalOf(chosen()));
  };

  if (place) {
    openDoors(add);
    find("tray-files", HTMLElement).addEventListener("click", ({ target }) => {
      const id = target instanceof Element ? target.closest("button")?.dataset["leaveOut"] : undefined;
      if (id === undefined) return;
      put(chosen().filter((file) => file.id !== id));
      announce(totalOf(chosen()));
      const next = document.querySelector("#tray-files button") ?? find("message", HTMLElement);
      if (next instanceof HTMLElement) next.focus();
    });
    put(chosen());
  }
  return {
    chosen,
    clear: () => place && put([]),
    /** Says the words of the tray anew, in the language that is read now. */
    renew: () => {
      if (!place) return;
      delete find("tray-files", HTMLElement).dataset["ids"];
      put(chosen());
    },
    /** Files of an earlier message, to be sent with the next one. @param {readonly ChosenFile[]} files */
    addAgain: async (files) => {
      const here = await Promise.all(files.map(async (file) => ({ file, blob: await blobs.get(file.id) })));
      if (!here.every(({ blob }) => blob)) return put(chosen(), [wordWith("filesGone", {})]);
      const again = [];
      for (const { file, blob } of here) if (blob) again.push(await keepFile(new File([blob], file.name, blob), blobs));
      put([...chosen(), ...again].slice(0, mostFiles));
      announce(totalOf(chosen()));
    },
  };
}

/** @param {File} file @param {import("./blob-store.js").BlobStore} blobs @returns {Promise<ChosenFile>} */
async function keepFile(file, blobs) {
  const kept = { id: newId(), name: file.name.slice(-LONGEST_NAME), size_B: file.size };
  await blobs.put(kept.id, file);
  const small = await shrinkPicture(file);
  if (small) await blobs.put(smallKey(kept), small);
  return kept;
}

/** @param {readonly ChosenFile[]} files @param {readonly string[]} problems @param {import("./blob-store.js").BlobStore} blobs */
function showTray(files, problems, blobs) {
  const problem = find("tray-problem", HTMLElement);
  problem.textContent = problems.join("\n");
  problem.hidden = problems.length === 0;
  find("tray", HTMLElement).hidden = files.length === 0 && problems.length === 0;
  find("tray-total", HTMLElement).textContent = files.length === 0 ? "" : totalOf(files);
  showChips(find("tray-files", HTMLElement), files, blobs, ({ id, name }) => {
    const button = document.createElement("button");
    button.type = "button";
    button.className = "button button-plain leave-out";
    button.dataset["leaveOut"] = id;
    button.setAttribute("aria-label", wordWith("takeAway", { name }));
    button.textContent = "×";
    return button;
  });
}

/** @param {readonly ChosenFile[]} files */
function totalOf(files) {
  const size = saySize(files.reduce((sum, { size_B }) => sum + size_B, 0));
  return files.length === 1 ? wordWith("trayOne", { size }) : wordWith("trayMany", { n: files.length, size });
}

/** Every way in which files come. @param {(files: readonly File[]) => unknown} add */
function openDoors(add) {
  for (const source of ["camera", "papers"]) {
    const picker = find(`pick-${source}`, HTMLInputElement);
    document.querySelector(`[data-pick="${source}"]`)?.addEventListener("click", () => picker.click());
    picker.addEventListener("change", () => {
      const files = [...(picker.files ?? [])];
      // The same file may be chosen again.
      picker.value = "";
      void add(files);
    });
  }
  /** @param {DataTransfer | null} data */
  const filesOf = (data) => [...(data?.files ?? [])];
  document.addEventListener("paste", (event) => {
    const files = filesOf(event.clipboardData);
    if (files.length === 0) return;
    event.preventDefault();
    void add(files);
  });
  document.addEventListener("dragover", (event) => {
    if (!event.dataTransfer?.types.includes("Files")) return;
    event.preventDefault();
    document.body.classList.add("is-dropping");
  });
  document.addEventListener("dragleave", ({ relatedTarget }) => {
    if (relatedTarget === null) document.body.classList.remove("is-dropping");
  });
  document.addEventListener("drop", (event) => {
    document.body.classList.remove("is-dropping");
    const files = filesOf(event.dataTransfer);
    if (files.length === 0) return;
    event.preventDefault();
    void add(files);
  });
}
