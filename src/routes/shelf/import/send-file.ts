export type Sent = { readonly location?: string; readonly message?: string };

/**
 * Sends a file as the body of a request, and tells how much of it is on its way: `fetch` cannot.
 *
 * @param progress is given the bytes sent so far
 * @returns what the server answered, where that can be read
 * @throws the signal's reason when it is aborted; Error where the server was not reached
 */
export function sendFile(
  address: string,
  file: File,
  signal: AbortSignal,
  progress: (bytes: number) => void,
): Promise<Sent & { readonly status: number }> {
  return new Promise((resolve, reject) => {
    const request = new XMLHttpRequest();
    request.open('POST', address);
    request.responseType = 'json';
    request.setRequestHeader('content-type', 'application/octet-stream');
    request.setRequestHeader('accept', 'application/json');
    request.setRequestHeader('x-file-name', encodeURIComponent(file.name));
    request.upload.onprogress = ({ loaded }) => progress(loaded);
    request.onload = () => resolve({ ...(request.response as Sent | null), status: request.status });
    request.onerror = () => reject(new Error(`no answer from ${address}`));
    request.onabort = () => reject(signal.reason as Error);
    signal.addEventListener('abort', () => request.abort(), { once: true });
    request.send(file);
  });
}
