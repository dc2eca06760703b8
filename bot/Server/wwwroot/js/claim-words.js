// The words for what happens to claims.
/** @type {Record<string, string>} */
export const states = {
  draft: 'draft', ready: 'ready to hand in', submitted: 'submitted', approved: 'approved', declined: 'declined', returned: 'returned',
};

/** @type {Record<string, string>} */
export const happened = {
  begun: 'Begun', 'unit-told': 'Unit written down', readied: 'Made ready', submitted: 'Submitted', approved: 'Approved', declined: 'Declined', returned: 'Returned',
};
