const words = { fits: 'waiting for review', overtaken: 'a page changed since', 'in-place': 'in place', 'taken-back': 'taken back' };

/** How a proposal stands, in words. */
export const standing = each => words[each.stands] + (each.errors && each.stands !== 'taken-back' ? `, brings ${each.errors} ${each.errors === 1 ? 'error' : 'errors'}` : '');
