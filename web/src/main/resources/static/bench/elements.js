// Small pieces of page and drawing.

const SVG = "http://www.w3.org/2000/svg";

/**
 * A piece of the page. @param {string} tag @param {Record<string, string>} attributes
 * @param {...(Node | string)} children
 */
export function html(tag, attributes = {}, ...children) {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    made.setAttribute(name, value);
  }
  made.append(...children);
  return made;
}

/**
 * A piece of a drawing. @param {string} tag @param {Record<string, string | number>} attributes
 * @param {...(Node | string)} children
 */
export function svg(tag, attributes = {}, ...children) {
  const made = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) {
    made.setAttribute(name, String(value));
  }
  made.append(...children);
  return made;
}

/** The element that must be there. @param {string} id */
export function byId(id) {
  const found = document.getElementById(id);
  if (found === null) {
    throw new Error(`the page has no ${id}`);
  }
  return found;
}

/** Writes only what has changed, so that nothing is announced or laid out twice. @param {Element} where @param {string} text */
export function write(where, text) {
  if (where.textContent !== text) {
    where.textContent = text;
  }
}
