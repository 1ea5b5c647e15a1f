import { mkdir, open } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';

/** Waits until a file that was written is on the disk. Its name is so only when its folder is, too. */
export async function fileToDisk(path: string): Promise<void> {
  const file = await open(path, 'r+');
  try {
    await file.sync();
  } finally {
    await file.close();
  }
}

/** Waits until the names in a folder are on the disk: new ones, and what was renamed or removed. */
export async function folderToDisk(path: string): Promise<void> {
  if (process.platform === 'win32') return; // opens no folders, and keeps their names in its journal
  const folder = await open(path, 'r');
  try {
    await folder.sync();
  } finally {
    await folder.close();
  }
}

/** Makes a folder that may be missing, with those above it, and waits until it is on the disk. */
export async function makeFolder(path: string): Promise<void> {
  const first = await mkdir(path, { recursive: true });
  if (first === undefined) return;
  for (let made = resolve(path); ; made = dirname(made)) {
    await folderToDisk(dirname(made));
    if (made === resolve(first)) return;
  }
}
