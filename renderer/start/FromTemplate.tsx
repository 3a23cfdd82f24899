import { useRef } from "react";
import type { Request } from "../../core/contract/contract.ts";
import { words } from "./words.ts";

export type TemplateFile = NonNullable<Request<"files.create">["template"]>;

/** What a new route starts with: the program's standards and catalogues, or those of a template a person chooses. */
export function FromTemplate(props: {
  readonly template: TemplateFile | null;
  readonly onChange: (template: TemplateFile | null) => void;
}) {
  const { template, onChange } = props;
  const chooser = useRef<HTMLInputElement>(null);
  return (
    <div className="from-template">
      <span>{template === null ? words.ownStandards : words.startsWith(template.fileName)}</span>
      <button type="button" className="fix" onClick={() => chooser.current?.click()}>
        {template === null ? words.chooseTemplate : words.otherTemplate}
      </button>
      {template !== null && (
        <button type="button" className="fix" onClick={() => onChange(null)}>
          {words.noTemplate}
        </button>
      )}
      <input
        ref={chooser}
        type="file"
        accept=".json"
        aria-label={words.templateFile}
        hidden
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          if (file) void file.text().then((text) => onChange({ fileName: file.name, text }));
          event.target.value = "";
        }}
      />
    </div>
  );
}
