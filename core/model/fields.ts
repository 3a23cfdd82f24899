import { z } from "zod";

/** Stable name of a row, given by whoever makes the row; never shown as a tag. */
export const id = z.string().min(1).max(80);

/** Reference to a row of another table. */
export const reference = z.string().min(1).max(80);

/** Words a person wrote; may be empty. */
export const words = z.string().max(2000);

/** A tag, name or address a person reads; never empty. */
export const label = z.string().trim().min(1).max(200);

/** A figure that may be anything finite. */
export const figure = z.number().finite();

/** A quantity that cannot be negative. */
export const amount = z.number().finite().nonnegative();

/** A quantity that must be there to mean anything. */
export const positive = z.number().finite().positive();

/** A count of things. */
export const count = z.number().int().nonnegative();

/** A number on a face, tube or list, from 1. */
export const ordinal = z.number().int().positive();

/** A part of a whole, 0 to 1. */
export const fraction = z.number().min(0).max(1);

/**
 * How far a figure that came from outside can be trusted.
 * seen: read in a public copy of the document; memory: believed to be in it, not read again;
 * practice: trade habit or the company's own setting; computed: worked out here.
 */
export const mark = z.enum(["seen", "memory", "practice", "computed"]);

/** Where a catalogue figure comes from; printed beside every finding and sheet that leans on it. */
export const basisFields = {
  basisDocument: words,
  basisClause: words,
  basisEdition: words,
  basisMark: mark,
};

/** Horizontal position on the route's own grid (core/geodesy/localGrid), m. */
export const positionFields = { eastM: figure, northM: figure };
