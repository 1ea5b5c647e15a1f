import type { Attachment } from 'svelte/attachments';
/** A pouch that is dragged from one meal to another. @property place the meal, as `placeKey` names it */
export type Dragged = { readonly place: string; readonly code: string };

const TYPE = 'application/x-ridgelarder-pouch';

/** Makes an element be dragged as one pouch of a lot. Fingers and keys have the list "Move to" instead: browsers drag with a pointer only. */
export const draggable =
  (pouch: Dragged | undefined): Attachment<HTMLElement> =>
  (element) => {
    if (!pouch) return;
    element.draggable = true;
    const start = ({ dataTransfer }: DragEvent) => {
      dataTransfer?.setData(TYPE, JSON.stringify(pouch));
      if (dataTransfer) dataTransfer.effectAllowed = 'move';
    };
    element.addEventListener('dragstart', start);
    return () => {
      element.draggable = false;
      element.removeEventListener('dragstart', start);
    };
  };

/** Lets pouches be dropped on an element, which carries `data-over` while one hangs over it. */
export const dropPlace =
  (drop: ((pouch: Dragged) => void) | undefined): Attachment<HTMLElement> =>
  (element) => {
    if (!drop) return;
    const isPouch = (event: DragEvent) => event.dataTransfer?.types.includes(TYPE) ?? false;
    const over = (event: DragEvent) => {
      if (!isPouch(event)) return;
      event.preventDefault();
      element.dataset['over'] = '';
    };
    const leave = () => delete element.dataset['over'];
    const dropped = (event: DragEvent) => {
      leave();
      const text = event.dataTransfer?.getData(TYPE);
      if (!text) return;
      event.preventDefault();
      drop(JSON.parse(text) as Dragged);
    };
    element.addEventListener('dragover', over);
    element.addEventListener('dragleave', leave);
    element.addEventListener('drop', dropped);
    return () => {
      element.removeEventListener('dragover', over);
      element.removeEventListener('dragleave', leave);
      element.removeEventListener('drop', dropped);
    };
  };
