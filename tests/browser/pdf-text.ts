import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export type PdfPage = { readonly widthPt: number; readonly heightPt: number; readonly text: string };

/** Reads a PDF back: the size of each page, in points of 1/72 inch, and the text on it in reading order. */
export async function readPdf(bytes: Uint8Array): Promise<PdfPage[]> {
  const document = await getDocument({ data: Uint8Array.from(bytes), verbosity: 0 }).promise;
  const pages: PdfPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { width, height } = page.getViewport({ scale: 1 });
    const { items } = await page.getTextContent();
    const text = items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join('');
    pages.push({ widthPt: width, heightPt: height, text });
  }
  await document.cleanup();
  return pages;
}
