/**
 * What the made children are made of. Each figure says where it comes from; "our own" means that nobody we know of
 * has published one (there are no norms for children's times by fact, for their errors or for keyed digits).
 */

/** One step of counting on, ms: Groen & Parkman 1972; Ashcraft & Stazyk 1981. */
export const countStepMs = 400;

/** The age at which a step takes that long: Groen and Parkman's children were in first grade (from memory). */
export const countStepAge = 7;

/** How much longer a speeded task takes at an age than for a grown-up: Kail 1991, from memory. */
export const ageScaling = (years: number): number => 1 + 5.16 * Math.exp(-0.21 * years);

/** Adding one more group (8, 16, 24) against counting on by one: our own. */
export const groupSteps = 2;

/**
 * How fast counting turns into memory: after n exposures a fact is counted with chance e^(−n/17). So 3 in 100 are
 * still counted after 60, which is where Rickard 1997 finds the shift complete, and the cost of a count falls as
 * Zbrodoff 1995 has it over three blocks of practice: .490, .105, .015 s at 0, 26 and 59 exposures.
 */
export const shiftExposures = 17;

/** A grown-up's time to get a fact from memory, hand left out, ms: our own. */
export const retrieveMs = 480;

/** A fact just remembered takes this much longer (share), and loses it exponentially: Heathcote, Brown & Mewhort 2000 for the shape, our own figures. */
export const freshSlowness = { share: 0.7, exposures: 30 } as const;

/** Spread of think time, s of a log-normal: from memory, by counting, from day to day. Log-normal is usual (Ratcliff 1993); figures our own, near the .4 of all together. */
export const spread = { memory: 0.26, counting: 0.36, day: 0.06 } as const;

/** A hurried answer: share of the time from memory, and how often it is right. Our own. */
export const hurried = { time: 0.4, right: 0.42 } as const;

/** Practice of a fact that also reaches its turn-around (share of an exposure): our own. */
export const turnAroundShare = 0.5;

/** A child who checks counts it over once more: share of the think time added. Siegler 1988 for the habit, our own figure. */
export const checkingShare = 0.8;

/** From one card's end to the next one's paint, ms, and the sooner end of a first key. Our own. */
export const paintMs = { least: 9, most: 19 } as const;
export const soonestKeyMs = 280;

/** Reading a whole fact that is shown, ms for a grown-up: our own. */
export const readMs = 420;

/** Between two steps of a child's day, ms. Our own. */
export const betweenMs = { least: 15_000, most: 60_000 } as const;

/**
 * The boat's calendar. School is Monday to Friday; one week in the middle is a holiday; each child misses a day or
 * two. Today counts as a school day on any day of the week, so that there is always something to see. No new set is
 * begun in the last days, so that a visitor finds each child at home in one.
 */
export const calendar = { weeks: 8, holidayWeek: 4, settledDays: 8 } as const;

/**
 * Today's morning is staged: Wren has done everything, Juniper nothing yet, and of Teo's sheet up to this many throws
 * the first is taken that ends in one of the two lower bands, so that a row waits for him.
 */
export const stagedThrows = 240;
