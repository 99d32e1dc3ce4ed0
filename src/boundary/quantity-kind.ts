import { z } from "zod";
import { QUANTITY_KINDS, type QuantityKind } from "../units/quantity-kinds.ts";

/** The name of a kind of quantity. */
export const quantityKind = z.enum(Object.keys(QUANTITY_KINDS) as [QuantityKind, ...QuantityKind[]]);
