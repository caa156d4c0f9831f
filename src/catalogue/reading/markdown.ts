/** The HTML of a file's Markdown body. HTML in the Markdown is shown as text, never passed on. */
import MarkdownIt from 'markdown-it';

const markdown = new MarkdownIt({ html: false, linkify: false, typographer: false });

// The site's security policy refuses inline styles, which is how markdown-it aligns the cells of a table.
for (const rule of ['th_open', 'td_open']) {
  markdown.renderer.rules[rule] = (tokens, index, options, _env, self) => {
    const token = tokens[index];
    const align = /text-align:(\w+)/.exec(String(token?.attrGet('style') ?? ''))?.[1];
    if (token !== undefined && align !== undefined) token.attrs = [['class', `align-${align}`]];
    return self.renderToken(tokens, index, options);
  };
}

/** HTML without a script, a style or an event handler in it; '' for an empty body. */
export function renderMarkdown(body: string): string {
  return body.trim() === '' ? '' : markdown.render(body);
}

/** Addresses of pictures in the Markdown that lie on another site: a shop's pages ask nothing of others. */
export function outsidePictures(body: string): string[] {
  if (!body.includes('![')) return [];
  return markdown
    .parse(body, {})
    .flatMap(({ children }) => children ?? [])
    .filter(({ type }) => type === 'image')
    .map((token) => String(token.attrGet('src') ?? ''))
    .filter((src) => /^(?:[a-z][a-z0-9+.-]*:)?\/\//i.test(src));
}

/** Addresses that the links of the Markdown lead to, as they were written. */
export function linksIn(body: string): string[] {
  if (!body.includes('](') && !body.includes(']:') && !body.includes('<')) return [];
  return markdown
    .parse(body, {})
    .flatMap(({ children }) => children ?? [])
    .filter(({ type }) => type === 'link_open')
    .map((token) => asWritten(String(token.attrGet('href') ?? '')));
}

function asWritten(href: string): string {
  try {
    return decodeURI(href);
  } catch {
    return href;
  }
}
