/** The words that call off work that goes on, alone or with the short id of the work; the desk reads the same. */
const CANCEL = /^[\s¿¡/]*(?:cancel|cancelar|cancela|cancele)(?:\s+[0-9a-f]{8})?[\s?!.,;:]*$/i;

/**
 * True for a message that must not wait behind the work that it calls off.
 * @param {string} text
 */
export const callsOff = (text) => CANCEL.test(text);
