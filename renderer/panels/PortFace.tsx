import type { Plant } from "../../core/plant/plant.ts";
import { facePlan, portsOf } from "../../core/plant/terminalView.ts";
import { panelWords } from "./words.ts";

const cellPx = 30;

/** The face of a terminal as the crew sees it: every port in its rank with its number, filled where it is used, struck where it is reserved. */
export function PortFace({ plant, terminalId }: { readonly plant: Plant; readonly terminalId: string }) {
  const ports = portsOf(plant, terminalId);
  const face = facePlan(plant, plant.rowOf("terminal", terminalId).terminalModelId);
  const width = Math.max(...face.map((one) => one.along + 1)) * cellPx;
  const height = Math.max(...face.map((one) => one.rank + 1)) * cellPx;
  const usedCount = ports.filter((one) => one.dropIds.length > 0).length;
  const reservedCount = ports.filter((one) => one.isReserved).length;
  return (
    <svg
      className="face"
      viewBox={`-7 -7 ${width + 14} ${height + 14}`}
      width={width + 14}
      height={height + 14}
      role="img"
      aria-label={panelWords.face(usedCount, reservedCount, ports.length)}
    >
      <rect x={-6} y={-6} width={width + 12} height={height + 12} rx={9} className="face-body" />
      {face.map(({ port, rank, along }) => {
        const isUsed = (ports[port - 1]?.dropIds.length ?? 0) > 0;
        const isReserved = ports[port - 1]?.isReserved ?? false;
        return (
          <g key={port} transform={`translate(${along * cellPx + cellPx / 2} ${rank * cellPx + cellPx / 2})`}>
            <circle r={11} className={isUsed ? "port-used" : "port-spare"} />
            {isReserved && <path d="M -11 0 L 0 -11 M 0 11 L 11 0" className="port-reserved" />}
            <text
              className={isUsed ? "port-number-used" : "port-number"}
              textAnchor="middle"
              dominantBaseline="central"
            >
              {port}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
