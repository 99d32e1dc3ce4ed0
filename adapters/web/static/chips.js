import { saySize } from "./check-file.js";

/**
 * Files as small pictures with their names and sizes.
 * @typedef {import("./log-store.js").ChosenFile} ChosenFile
 */

/** Key of the small picture of a file. @param {{ id: string }} file */
export const smallKey = ({ id }) => `${id}.small`;

/**
 * @param {HTMLElement} list
 * @param {readonly ChosenFile[]} files
 * @param {import("./blob-store.js").BlobStore} blobs
 * @param {(file: ChosenFile) => HTMLElement | undefined} more what stands behind each
 */
export function showChips(list, files, blobs, more) {
  const ids = files.map(({ id }) => id).join(" ");
  list.hidden = files.length === 0;
  if (list.dataset["ids"] === ids) return;
  list.dataset["ids"] = ids;
  list.replaceChildren(...files.map((file) => makeChip(file, blobs, more(file))));
}

/** @param {ChosenFile} file @param {import("./blob-store.js").BlobStore} blobs @param {HTMLElement | undefined} more */
function makeChip(file, blobs, more) {
  const chip = document.createElement("li");
  chip.className = "chip";
  const frame = document.createElement("span");
  frame.className = "chip-picture";
  frame.setAttribute("aria-hidden", "true");
  frame.textContent = (/\.([a-z0-9]{1,4})$/i.exec(file.name)?.[1] ?? "?").toUpperCase();
  const name = document.createElement("span");
  name.className = "chip-name";
  const bdi = document.createElement("bdi");
  bdi.textContent = file.name;
  const size = document.createElement("span");
  size.className = "note";
  size.textContent = saySize(file.size_B);
  name.append(bdi, " ", size);
  chip.append(frame, name, ...(more ? [more] : []));
  void showSmall(frame, file, blobs);
  return chip;
}

/** @param {HTMLElement} frame @param {ChosenFile} file @param {import("./blob-store.js").BlobStore} blobs */
async function showSmall(frame, file, blobs) {
  const small = await blobs.get(smallKey(file));
  if (!small) return;
  const picture = document.createElement("img");
  picture.alt = "";
  picture.onload = picture.onerror = () => URL.revokeObjectURL(picture.src);
  picture.src = URL.createObjectURL(small);
  frame.replaceChildren(picture);
}
