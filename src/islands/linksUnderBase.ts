/**
 * Links that scripts draw, below the path where the site lies: components write addresses as if at the root, as pages
 * do, and here Preact's drawing of each link adds the path. At the root, and on the server, nothing is done.
 */
import { options } from 'preact';
import { siteHref } from '../catalogue/siteHref.ts';

if (siteHref('/') !== '/') {
  const before = options.vnode;
  options.vnode = (vnode) => {
    const props = vnode.props as { href?: unknown };
    const { href } = props;
    if (vnode.type === 'a' && typeof href === 'string' && /^\/(?!\/)/.test(href)) props.href = siteHref(href);
    before?.(vnode);
  };
}
