/** Put on an element that wakes later than what is around it: leaves in it what the page was built with. */
export const asBuilt = { dangerouslySetInnerHTML: { __html: '' } };
