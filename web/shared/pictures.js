// Makes pictures smaller before they are sent, and leaves behind where and with what they were taken.

/**
 * A picture as JPEG (or PNG, where it may be see-through) of at most so many pixels on its longer side.
 * @param file what was chosen or photographed
 * @returns Blob; throws in words when it is no picture
 */
export async function reduced(file, longest, { type = 'image/jpeg', quality = 0.82 } = {}) {
  let picture;
  try {
    picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    throw { problems: [{ field: 'photo', given: file.name ?? '', limit: 'This is not a picture that the browser can read.', remedy: 'Choose a JPEG, PNG or WebP.' }] };
  }
  const scale = Math.min(1, longest / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext('2d').drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  return new Promise((resolve, reject) => {
    canvas.toBlob(blob => (blob ? resolve(blob) : reject(new Error('no picture'))), type, quality);
  });
}
