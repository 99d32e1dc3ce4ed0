/** Edge of the small picture beside a file's name, for screens of twice the usual density [px]. */
const SMALL_px = 128;

/**
 * A picture small enough to stand beside its name; nothing for papers and for what the browser cannot draw.
 * @param {Blob} file
 * @returns {Promise<Blob | undefined>}
 */
export async function shrinkPicture(file) {
  if (!file.type.startsWith("image/")) return undefined;
  try {
    const picture = await createImageBitmap(file);
    const edge = Math.min(picture.width, picture.height);
    const canvas = document.createElement("canvas");
    canvas.width = canvas.height = SMALL_px;
    const [left, top] = [(picture.width - edge) / 2, (picture.height - edge) / 2];
    canvas.getContext("2d")?.drawImage(picture, left, top, edge, edge, 0, 0, SMALL_px, SMALL_px);
    picture.close();
    return await new Promise((resolve) => canvas.toBlob((blob) => resolve(blob ?? undefined), "image/jpeg", 0.8));
  } catch {
    return undefined;
  }
}
