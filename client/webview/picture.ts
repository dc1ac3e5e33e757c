import { tell } from './editor.ts';
import type { PictureOrder } from './messages.ts';

async function drawn({ svg, width, height }: PictureOrder): Promise<Blob | null> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image(width, height);
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [width, height];
    canvas.getContext('2d')?.drawImage(image, 0, 0, width, height);
    return await new Promise((resolve) => canvas.toBlob(resolve, 'image/png'));
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** Makes a picture of a drawing, as the browser shows it. */
export async function takePicture(order: PictureOrder): Promise<void> {
  const picture = await drawn(order).catch(() => null);
  const png = picture === null ? null : new Uint8Array(await picture.arrayBuffer());
  tell({ type: 'pictured', id: order.id, png });
}
