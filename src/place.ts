/** The address of the demo household, so that a reload stays on the boat. */
export const boatAddress = '#boat';

/** Whether this page is on the boat; the other household is another page, and neither can reach the other's log. */
export const isBoat = location.hash === boatAddress;

/** Goes to the other household by loading the page anew. */
export function goTo(address: string): void {
  location.hash = address;
  location.reload();
}
