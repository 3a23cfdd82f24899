import type { Request } from "../../core/contract/contract.ts";
import { FileButton } from "../panels/FileButton.tsx";
import { words } from "./words.ts";

export type TemplateFile = NonNullable<Request<"files.create">["template"]>;

/** What a new route starts with: the program's standards and catalogues, or those of a template a person chooses. */
export function FromTemplate(props: {
  readonly template: TemplateFile | null;
  readonly onChange: (template: TemplateFile | null) => void;
}) {
  const { template, onChange } = props;
  return (
    <div className="from-template">
      <span>{template === null ? words.ownStandards : words.startsWith(template.fileName)}</span>
      <FileButton
        label={template === null ? words.chooseTemplate : words.otherTemplate}
        accept=".json"
        onFiles={([file]) => {
          if (file) void file.text().then((text) => onChange({ fileName: file.name, text }));
        }}
      />
      {template !== null && (
        <button type="button" className="fix" onClick={() => onChange(null)}>
          {words.noTemplate}
        </button>
      )}
    </div>
  );
}
