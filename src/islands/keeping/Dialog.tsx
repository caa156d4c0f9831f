/** A dialog of its own at the end of the page, so that it can be printed alone, or before a part of it; gone once it is closed. */
import { type ComponentChildren, h, render } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

interface Props {
  readonly class: string;
  /** Id of its heading. */
  readonly heading: string;
  /** Whether the page behind it waits. */
  readonly modal: boolean;
  /** Whether it is printed without the page behind it. */
  readonly alone?: boolean;
  readonly onClose: () => void;
  readonly children: ComponentChildren;
}

function Dialog({ class: name, heading, modal, onClose, children }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  useLayoutEffect(() => {
    if (modal) dialog.current?.showModal();
    else dialog.current?.show();
  }, []);
  return (
    <dialog ref={dialog} class={name} aria-labelledby={heading} onClose={onClose}>
      {children}
    </dialog>
  );
}

/** Opens a dialog; `content` gets what closes it. It stands in the flow where it is given the part that follows it. */
export function openDialog(
  props: Pick<Props, 'class' | 'heading' | 'modal' | 'alone'>,
  content: (close: () => void) => ComponentChildren,
  before: Element | null = null,
): void {
  const place = document.createElement('div');
  place.className = 'sh-place';
  if (before === null) document.body.append(place);
  else before.before(place);
  if (props.alone) document.body.classList.add('sh-alone');
  const onClose = () => {
    render(null, place);
    place.remove();
    if (props.alone) document.body.classList.remove('sh-alone');
  };
  const close = () => place.querySelector('dialog')?.close();
  render(h(Dialog, { ...props, onClose, children: content(close) }), place);
}
