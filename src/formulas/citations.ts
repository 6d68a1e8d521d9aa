/** Works that many figures come from, as their sources name them. */
export const fao = 'FAO Fisheries Technical Paper 589 (2014)';
export const timmons = 'Timmons and Ebeling, Recirculating Aquaculture';
export const davidson = 'Davidson and Summerfelt, Aquacultural Engineering 33:47 (2005)';
export const wasAbstract = 'World Aquaculture Society abstract 165932';
