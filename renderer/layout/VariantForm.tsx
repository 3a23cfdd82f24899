import type { ReactNode } from "react";
import type { Variant } from "../../core/edits/variantSteps.ts";
import { compareNatural } from "../../core/layout/order.ts";
import type { TableName } from "../../core/model/tables.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { cellText } from "../settings/columnForm.ts";
import { FieldLine } from "../settings/FieldLine.tsx";
import { whatIfWords as words } from "./whatIfWords.ts";

type Props = {
  readonly open: OpenRoute;
  readonly variant: Variant;
  readonly onChange: (variant: Variant) => void;
};

/** Standards, prices and models of a trial: each field shows what the route has until it is changed, and then what it was. */
export function VariantForm({ open, variant, onChange }: Props) {
  const settings = open.plant.settings();
  const dropType = open.plant.rowOf("dropType", settings.dropTypeId);
  const keep = (part: keyof Variant) => (value: number) => onChange({ ...variant, [part]: value });
  return (
    <div className="what-if-form">
      <section>
        <h3>{words.standards}</h3>
        <TrialField
          open={open}
          at={["settings", "sparePortCount"]}
          name={words.spare}
          present={settings.sparePortCount}
          wanted={variant.sparePortCount}
          onKeep={keep("sparePortCount")}
        />
        <TrialField
          open={open}
          at={["settings", "dropReachM"]}
          name={words.reach}
          present={settings.dropReachM}
          wanted={variant.dropReachM}
          onKeep={keep("dropReachM")}
        />
        <TrialField
          open={open}
          at={["dropType", "costPerM"]}
          name={words.dropPrice(dropType.name)}
          present={dropType.costPerM}
          wanted={variant.dropCostPerM}
          onKeep={keep("dropCostPerM")}
        />
      </section>
      <section>
        <h3>{words.models}</h3>
        <Models open={open} variant={variant} onChange={onChange} />
      </section>
    </div>
  );
}

function Models({ open, variant, onChange }: Props) {
  const models = [...open.route.terminalModel.values()].sort(
    (a, b) => a.portCount - b.portCount || compareNatural(a.name, b.name),
  );
  const used = variant.modelIds ?? models.map((one) => one.id);
  const use = (id: string, isUsed: boolean): void => {
    const modelIds = models.map((one) => one.id).filter((one) => (one === id ? isUsed : used.includes(one)));
    const { modelIds: _all, ...others } = variant;
    onChange(modelIds.length === models.length ? others : { ...others, modelIds });
  };
  return models.map((one) => (
    <div key={one.id} className="what-if-model">
      <input
        type="checkbox"
        aria-label={words.hang(one.name)}
        checked={used.includes(one.id)}
        onChange={(event) => use(one.id, event.target.checked)}
      />
      <TrialField
        open={open}
        at={["terminalModel", "cost"]}
        name={one.name}
        present={one.cost}
        wanted={variant.modelCosts?.[one.id]}
        onKeep={(cost) => onChange({ ...variant, modelCosts: { ...variant.modelCosts, [one.id]: cost } })}
      />
    </div>
  ));
}

type FieldProps = {
  readonly open: OpenRoute;
  readonly at: readonly [table: TableName, column: string];
  readonly name: string;
  readonly present: number;
  readonly wanted: number | undefined;
  readonly onKeep: (value: number) => void;
};

function TrialField({ open, at: [table, column], name, present, wanted, onKeep }: FieldProps): ReactNode {
  const units = unitsOf(open);
  const isOther = wanted !== undefined && wanted !== present;
  return (
    <FieldLine
      route={open.route}
      units={units}
      table={table}
      column={column}
      name={name}
      value={wanted ?? present}
      onKeep={(value) => onKeep(Number(value))}
    >
      {isOther && <p className="quiet">{words.was(cellText(column, present, units))}</p>}
    </FieldLine>
  );
}
