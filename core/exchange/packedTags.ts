const pair = /"((?:[^"\\]|\\.)*)"=>"((?:[^"\\]|\\.)*)"/g;

/** Unpacks `"power"=>"pole","material"=>"wood"` to `power=pole, material=wood`; other text is given back as it is. */
export function unpackTags(text: string): string {
  const pairs = [...text.matchAll(pair)].map(([, key = "", value = ""]) => `${unescaped(key)}=${unescaped(value)}`);
  return pairs.length === 0 ? text : pairs.join(", ");
}

function unescaped(text: string): string {
  return text.replace(/\\(.)/g, "$1");
}
