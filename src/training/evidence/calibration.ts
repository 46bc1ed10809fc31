/** One sitting of the calibration: what the evidence said of the leading item, and whether it was so. */
export interface CalibrationClaim {
  readonly seed: string;
  /** What was wrong, and the tools that were bad beside it. */
  readonly truth: string;
  readonly tools: readonly string[];
  readonly claimed: string;
  readonly right: boolean;
  /** Chance of the claimed item, and of what no test tells from it, on everything shown. */
  readonly shown: number;
  /** On that alone which spoke for it. */
  readonly confirming: number;
  /** Whether the lower of the two still has it in the lead. Where another item is likelier, a verdict on it earns nothing. */
  readonly leads: boolean;
}

/** Which chance of a claim is held against the truth: `lower` is the lower of the two, as a verdict is judged. */
export const CLAIM_BASES = ['shown', 'confirming', 'lower'] as const;
export type ClaimBasis = (typeof CLAIM_BASES)[number];

export function chanceOfClaim({ shown, confirming }: CalibrationClaim, basis: ClaimBasis): number {
  if (basis === 'lower') return Math.min(shown, confirming);
  return basis === 'shown' ? shown : confirming;
}

/** What a table holds against the truth: on cited entries only what leads there, since else nothing is claimed. */
function claimedOn(claims: readonly CalibrationClaim[], basis: ClaimBasis): readonly CalibrationClaim[] {
  return basis === 'shown' ? claims : claims.filter(({ leads }) => leads);
}

/** A share with the interval that holds the true one in 95 of 100 cases. */
export interface MeasuredShare {
  readonly share: number;
  readonly from: number;
  readonly to: number;
}

/** One bin of the table: claims of about one chance, their mean, and the share of them that were right. */
export interface CalibrationBin {
  readonly claims: number;
  readonly meanChance: number;
  readonly right: MeasuredShare;
  /** Whether more than chance puts the share farther from the claim than it may be. */
  readonly strays: boolean;
}

export interface CalibrationTable {
  readonly basis: ClaimBasis;
  readonly claims: number;
  /** Sittings whose entries make another item likelier: they claim nothing, and are in no bin. */
  readonly without: number;
  /** Ten bins of the claimed chance, the lowest first. */
  readonly bins: readonly CalibrationBin[];
  /** Mean distance of claimed and true, weighed by the claims. */
  readonly expectedError: number;
  /** What so many honest claims would show of it by chance alone, on the average. */
  readonly errorByChance: number;
  /** Of claims of 95 % or more, how many there were and the share that was right; null where there were none. */
  readonly certain: { readonly claims: number; readonly right: MeasuredShare | null };
  /** Of those, the ones that were not right. */
  readonly wrong: readonly CalibrationClaim[];
  /** Whether the claims are as honest as they must be, as far as so many of them can tell. */
  readonly holds: boolean;
}

const BINS = 10;
const CERTAIN = 0.95;
/** So far a bin's share may be from its claim, and so far all of them on the average; what chance does comes on top. */
const MOST_APART = 0.05;
const MOST_ERROR = 0.03;

/** Claims against the truth, in ten bins. */
export function calibrationTable(all: readonly CalibrationClaim[], basis: ClaimBasis): CalibrationTable {
  const claims = claimedOn(all, basis);
  const chanceOf = (claim: CalibrationClaim): number => chanceOfClaim(claim, basis);
  const inBins = Array.from({ length: BINS }, (_, bin) =>
    claims.filter((claim) => Math.min(Math.floor(chanceOf(claim) * BINS), BINS - 1) === bin),
  );
  const bins = inBins.map((within) => binOf(within.map(chanceOf), rightOf(within)));
  const of = Math.max(claims.length, 1);
  const certain = claims.filter((claim) => chanceOf(claim) >= CERTAIN);
  const rightOfCertain = certain.length === 0 ? null : measuredShare(rightOf(certain), certain.length);
  const expectedError = bins.reduce(
    (sum, bin) => sum + (bin.claims / of) * Math.abs(bin.meanChance - bin.right.share),
    0,
  );
  const errorByChance = inBins.reduce((sum, within) => sum + meanErrorByChance(within.map(chanceOf)), 0) / of;
  return {
    basis,
    claims: claims.length,
    without: all.length - claims.length,
    bins,
    expectedError,
    errorByChance,
    certain: { claims: certain.length, right: rightOfCertain },
    wrong: certain.filter(({ right }) => !right),
    holds:
      bins.every(({ strays }) => !strays) &&
      isNoMore(expectedError, errorByChance) &&
      (rightOfCertain === null || rightOfCertain.to >= CERTAIN),
  };
}

/** What is by chance and what is not add up in squares; twice the mean by chance is hardly ever passed. */
function isNoMore(error: number, byChance: number): boolean {
  return error <= Math.sqrt(MOST_ERROR * MOST_ERROR + 4 * byChance * byChance);
}

const rightOf = (claims: readonly CalibrationClaim[]): number => claims.filter(({ right }) => right).length;

function binOf(chances: readonly number[], right: number): CalibrationBin {
  const n = chances.length;
  const sum = chances.reduce((total, chance) => total + chance, 0);
  const far = Math.abs(sum - right) - MOST_APART * n;
  return {
    claims: n,
    meanChance: sum / Math.max(n, 1),
    right: measuredShare(right, n),
    strays: far > HARDLY_CHANCE * widthOf(chances),
  };
}

/** Standard width of how many of these claims come true if they are honest. */
function widthOf(chances: readonly number[]): number {
  return Math.sqrt(chances.reduce((sum, p) => sum + p * (1 - p), 0));
}
/** So many widths off, ten bins are hardly ever by chance. */
const HARDLY_CHANCE = 3;

/** 97.5 % of the normal distribution lie below this many standard widths. */
const Z = 1.959964;

/**
 * The share k/n with its 95 % score interval, (p + z²/2n ± z·√(p(1 − p)/n + z²/4n²))/(1 + z²/n). Nothing is known of none.
 * Source: E. B. Wilson, "Probable inference, the law of succession, and statistical inference", J. Am. Stat. Assoc. 22
 * (1927) 209.
 */
export function measuredShare(count: number, of: number): MeasuredShare {
  if (of === 0) return { share: 0, from: 0, to: 1 };
  const share = count / of;
  const more = (Z * Z) / of;
  const middle = share + more / 2;
  const half = Z * Math.sqrt((share * (1 - share)) / of + more / (4 * of));
  return {
    share,
    from: Math.max((middle - half) / (1 + more), 0),
    to: Math.min((middle + half) / (1 + more), 1),
  };
}

/** Mean distance of honest claims' sum from the count that comes true: √(2/π) standard widths. */
function meanErrorByChance(chances: readonly number[]): number {
  return MEAN_OF_WIDTH * widthOf(chances);
}
const MEAN_OF_WIDTH = 0.797885;
