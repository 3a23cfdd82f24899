/** A turned rectangle on screen, px. */
type Plate = {
  readonly x: number;
  readonly y: number;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly turnRad: number;
};

/** Room on the screen, kept in small buckets: whoever comes first has the place. */
export type LabelGrid = {
  /** Marks a place as taken whatever lies there. */
  readonly block: (plate: Plate) => void;
  readonly blockLine: (fromX: number, fromY: number, toX: number, toY: number) => void;
  /** Marks a hairline: a label lies on it only where it finds no other place. */
  readonly crossLine: (fromX: number, fromY: number, toX: number, toY: number) => void;
  /** Takes the place if all of it is free; hairlines count only where they are minded. */
  readonly take: (plate: Plate, mindsHairlines: boolean) => boolean;
};

const cellPx = 5;

/** An empty screen. */
export function openLabelGrid(): LabelGrid {
  const taken = new Set<number>();
  const crossed = new Set<number>();
  const line = (cells: Set<number>, fromX: number, fromY: number, toX: number, toY: number): void => {
    const steps = Math.max(1, Math.ceil(Math.hypot(toX - fromX, toY - fromY) / cellPx));
    for (let i = 0; i <= steps; i += 1) {
      cells.add(cell(fromX + ((toX - fromX) * i) / steps, fromY + ((toY - fromY) * i) / steps));
    }
  };
  const cell = (x: number, y: number): number => Math.floor(x / cellPx) * 100_003 + Math.floor(y / cellPx);
  return {
    block(plate) {
      for (const one of cellsOf(plate, cell)) taken.add(one);
    },
    blockLine: (fromX, fromY, toX, toY) => line(taken, fromX, fromY, toX, toY),
    crossLine: (fromX, fromY, toX, toY) => line(crossed, fromX, fromY, toX, toY),
    take(plate, mindsHairlines) {
      const cells = cellsOf(plate, cell);
      if (cells.some((one) => taken.has(one) || (mindsHairlines && crossed.has(one)))) return false;
      for (const one of cells) taken.add(one);
      return true;
    },
  };
}

function cellsOf(plate: Plate, cell: (x: number, y: number) => number): number[] {
  const cos = Math.cos(plate.turnRad);
  const sin = Math.sin(plate.turnRad);
  const columns = Math.max(1, Math.ceil(plate.widthPx / cellPx));
  const rows = Math.max(1, Math.ceil(plate.heightPx / cellPx));
  const cells: number[] = [];
  for (let column = 0; column <= columns; column += 1) {
    for (let row = 0; row <= rows; row += 1) {
      const along = (column / columns - 0.5) * plate.widthPx;
      const across = (row / rows - 0.5) * plate.heightPx;
      cells.push(cell(plate.x + along * cos - across * sin, plate.y + along * sin + across * cos));
    }
  }
  return cells;
}
