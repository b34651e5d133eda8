/** What is wrong or worth saying, where, and what mends it. Its text stands beside the rule that raises it. */
export interface Finding {
	/** A word code: `key-unknown`, `chart-does-not-multiply`. */
	readonly code: string;
	readonly severity: "error" | "warning" | "note";
	/** JSON pointer into the file. */
	readonly path: string;
	/** Which part of that place is meant: the key itself, or what stands behind it. */
	readonly on?: "key" | "value";
	/** What stands there. */
	readonly says: string;
	/** Why that is wrong. */
	readonly why: string;
	readonly mend: string;
	/** A position found by another means (the YAML parser's own). */
	readonly span?: Span;
}
export interface Span {
	readonly line: number;
	readonly column: number;
	readonly length: number;
}
declare const phases: readonly [
	"clear",
	"prepare",
	"seal",
	"ducts",
	"check",
	"wrap",
	"ventilate",
	"contain",
	"insulate",
	"close",
	"prove"
];
export type Phase = (typeof phases)[number];
declare const roles: readonly [
	"lead",
	"crew",
	"hose",
	"helper",
	"tester",
	"electrician",
	"hvac",
	"roofer",
	"abater",
	"other"
];
export type Role = (typeof roles)[number];
export type GateState = "stop" | "hold" | "mend" | "note";
declare const ESTIMATE_FORMAT = "lidwork-estimate/1";
export type Verdict = "go" | "conditional" | "hold" | "stop";
export interface GateOut {
	id: string;
	code: string;
	state: GateState;
	open: boolean;
	stops: {
		phases: Phase[];
		places: string[];
	};
	where: string;
	why: string;
	clearedBy: string;
	clearedByTask?: string;
	clearance?: {
		by: string;
		on: string;
		paper: string;
		kind: string;
	};
	line: number;
	path: string;
}
export interface StoppedOut {
	id: string;
	title: string;
	phase: Phase;
	gate: string;
	why: string;
}
export interface AreaOut {
	id: string;
	kind: string;
	areaFt2: number;
	netAreaFt2: number;
	/** Absent where a ceiling is left out of the insulation. */
	existingR?: number;
	targetR?: number;
	addedR?: number;
	product?: string;
	chartR?: number; /** R of batts laid, and of fill packed to its density. */
	battR?: number;
	packedR?: number;
	interpolated?: boolean;
	settledDepthIn?: number;
	initialDepthIn?: number;
	topOfFillInitialIn?: number;
	topOfFillSettledIn?: number;
	bags?: number;
	addedWeightPsf?: number;
	ceilingLoadPsf?: number;
	ceilingLimitPsf?: number;
	finalR?: number;
	averageR?: number;
	uBefore?: number;
	uAfter?: number;
	edgeStripFt?: number;
	/** The taper at the eaves: fill at the inside face of the wall, and what the strip averages. */
	edgeStrip?: {
		widthFt: number;
		areaFt2: number;
		wallDepthIn: number;
		averageR: number;
	};
	/** What was found, from the ceiling up. */
	layers?: {
		id: string;
		fill: string;
		depthIn: number;
		layerR: number;
		stays: boolean;
	}[];
	/** What a drawing of the eave needs; wall and gap where the ceiling ends at a roof edge. */
	section?: {
		heelIn: number;
		pitch: number;
		joistIn: number;
		joistWidthIn: number;
		spacingIn: number;
		wallIn?: number;
		ventGapIn?: number;
	};
	/** Length of a baffle along the roof, and the top of dams and curbs above the ceiling. */
	baffleIn?: number;
	damTopIn?: number;
	markers?: number;
	/** Bags for this area as the crew counts them; all areas of a product come to its exact bags, up. */
	wholeBags?: number;
	/** Floor that one bag fills, framing and all: the pace of the hose. */
	bagFloorFt2?: number;
	/** The chart rows beside the one blown, with what their bags cost. */
	neighborRows?: {
		chartR: number;
		bags: number;
		bagsCents: number;
	}[];
	/** The lightest product that meets the R within the ceiling's limit, and what the job costs with it; how much more, where the fill at hand is in the price at all. */
	lighter?: {
		product: string;
		chartR: number;
		interpolated: boolean;
		bags: number;
		ceilingLoadPsf: number;
		totalCents: number;
		moreCents?: number;
	};
	stoppedBy: string[];
}
export interface SealingOut {
	id: string;
	kind: string;
	area: string;
	where: string;
	count: number; /** As the survey has it, in the words of a tape. */
	size?: string;
	method: string;
	materials: {
		item: string;
		quantity: number;
		unit: string;
	}[];
	/** Effective, at 4 Pa; what is not closed leaks as before. */
	leakageAreaIn2Before?: number;
	leakageAreaIn2After?: number;
	personHours: number;
	tasks: string[];
}
export interface DuctOut {
	id: string;
	area: string;
	where: string;
	use: "supply" | "return";
	shape: "round" | "rectangular" | "square" | "oval";
	count: number;
	method: string;
	surfaceFt2: number;
	wrapFt2?: number;
	jointFt: number;
	masticGal?: number;
	rBefore: number;
	rAfter?: number;
	lossBtuhBefore: number;
	lossBtuhAfter?: number;
	materials: {
		item: string;
		quantity: number;
		unit: string;
	}[];
	personHours: number;
	tasks: string[];
}
export interface UnitPriceOut {
	id: string;
	what: string;
	unit: string;
	priceCents: number;
}
export interface TaskOut {
	step: number;
	id: string;
	title: string;
	phase: Phase;
	areas: string[];
	after: string[];
	because: {
		task: string;
		why: string;
	}[];
	role: Role;
	personHours: number;
	cautions: string[];
	/** What has to stand so far off, by this step and ever after. */
	keepOff: {
		what: string;
		distanceIn: number;
	}[];
	/** What the step takes, without waste. */
	materials: {
		item: string;
		quantity: number;
		unit: string;
	}[];
	proof: string;
	clears: string[];
}
/** A reading that a test step takes, with its limit and what is done from which reading on, where there are such. */
export interface TestOut {
	id: string;
	task: string;
	of: string;
	where: string;
	reads: string;
	unit: string;
	before?: number;
	atMost?: number;
	acts: {
		from: number;
		act: string;
	}[];
}
export interface MaterialOut {
	item: string;
	name: string;
	needed: number;
	unit: string;
	wastePct: number;
	buy: number;
	buyUnit: string;
	/** How much of `unit` one purchase unit holds. */
	pack: number;
	/** Others of the price book that fill the same role no worse, and how many of them. */
	alternates: {
		item: string;
		name: string;
		buy: number;
		buyUnit: string;
	}[];
	charge: "whole" | "used";
	charged: number;
	unitPriceCents: number;
	totalCents: number;
	usedFor: string[];
	supplier?: string; /** The supplier’s own number. */
	code?: string;
	/** The price holds from so many on; one by itself costs the list price. */
	breakFrom?: number;
	listPriceCents?: number;
	/** Purchase units that the work takes, on hand, and taken from there; `buy` is what is left to order. */
	packs?: number;
	onHand?: number;
	fromStock?: number;
	/** What it stands for, and why. */
	insteadOf?: {
		item: string;
		name: string;
		why: string;
	};
	/** With several price books side by side: what the others would have charged. */
	offers?: {
		supplier: string;
		item: string;
		name: string;
		totalCents: number;
	}[];
}
export interface PriceOut {
	materialsCents?: number;
	salesTaxCents?: number;
	laborCents?: number;
	subcontractCents?: number;
	otherCents: number;
	directCents: number;
	contingencyCents?: number;
	overheadCents?: number;
	costCents?: number;
	marginPct?: number;
	markupPct?: number;
	minimumAddedCents?: number;
	roundingCents?: number;
	customerTaxCents?: number;
	totalCents?: number;
	incentivesCents?: number;
	netCents?: number;
	depositCents?: number;
	validDays?: number;
	/** Only where the company adds to it by risk: all of it, and what each risk of this house adds. */
	contingencyPct?: number;
	risks?: {
		id: string;
		addPct: number;
		why: string;
	}[];
	excludes: string[];
}
export interface FindingOut {
	code: string;
	severity: "warning" | "note";
	line: number;
	path: string;
	message: string;
}
export interface AssumptionOut {
	id: string;
	what: string;
	value: number;
	unit: string;
	why: string;
}
/** Areas at 4 Pa, flows at 50 Pa; all that follows from `cfm50Before` is absent without it. */
export interface AirLeakageOut {
	cfm50Before?: number;
	cfm50Assumed?: boolean;
	ach50Before?: number;
	leakageAreaIn2?: number;
	equivalentAreaIn2?: number;
	listedIn2Before?: number;
	listedIn2After?: number;
	/** The openings by how much they leak as found, largest first. */
	leaks?: {
		id: string;
		where: string;
		leakageAreaIn2: number;
		sharePct: number;
	}[];
	/** The whole ceiling by its area alone: a cross-check of the list. */
	ceilingIn2?: number;
	ceilingIn2Low?: number;
	ceilingIn2High?: number;
	cfm50CutLow?: number;
	cfm50CutExpected?: number;
	cfm50CutHigh?: number;
	cutCapped?: boolean;
	cfm50After?: number;
	ach50After?: number;
	naturalCfmBefore?: number;
	naturalCfmAfter?: number;
	naturalAchBefore?: number;
	naturalAchAfter?: number;
	nFactor?: number;
	naturalByNCfmBefore?: number;
	naturalByNCfmAfter?: number;
	stack?: {
		outsideF: number;
		heightFt: number;
		stackPa: number;
		neutralFtBefore: number;
		neutralFtAfter: number;
		ceilingPaBefore: number;
		ceilingPaAfter: number;
	};
	ventilationCfm?: number;
	ductCfm25Before?: number;
	ductCfm25Target?: number;
}
/** A year. Where a fact is missing only `missing` is there. */
export interface SavingsOut {
	fuel?: string;
	fuelUnit?: string;
	hdd65?: number;
	cdd65?: number;
	degreeDaysFrom?: string;
	heatingBtuLow?: number;
	heatingBtuExpected?: number;
	heatingBtuHigh?: number;
	fuelUnitsLow?: number;
	fuelUnitsExpected?: number;
	fuelUnitsHigh?: number;
	coolingKwhLow?: number;
	coolingKwhExpected?: number;
	coolingKwhHigh?: number;
	billCentsLow?: number;
	billCentsExpected?: number;
	billCentsHigh?: number;
	co2LbLow?: number;
	co2LbExpected?: number;
	co2LbHigh?: number;
	capped?: boolean;
	/** Absent beyond fifty years. */
	paybackYearsLow?: number;
	paybackYearsExpected?: number;
	paybackYearsHigh?: number;
	/** Heating alone, expected: which part of the price buys which part of the saving. */
	parts?: {
		id: "air" | "ducts" | "ceiling";
		heatingBtu: number;
		billCents: number;
		priceCents?: number;
		paybackYears?: number;
	}[];
	missing: string[];
}
/** One figure of the survey that may be off, and what it moves by itself. */
export interface UncertainOut {
	path: string;
	line: number;
	where: string;
	/** Written ~, a mean of probes, a word nobody knew, floor nobody saw. */
	why: "about" | "probes" | "unknown" | "unseen";
	stands: string;
	ends: (number | string)[];
	better: string;
	downCents: number;
	upCents: number;
	downHours: number;
	upHours: number;
	/** By how much the range of the price narrows once it is known. */
	narrowsCents: number;
}
/** Price and hours by what the survey itself leaves uncertain; rates and prices are taken as they are. */
export interface RangesOut {
	method: string;
	totalCentsLow: number;
	totalCentsExpected: number;
	totalCentsHigh: number;
	personHoursLow: number;
	personHoursExpected: number;
	personHoursHigh: number;
	/** Paths of at most three entries of `uncertain`, most first. */
	measureAgain: string[];
	uncertain: UncertainOut[];
	/** Ends at which other work would be priced: no part of the range. */
	outside: {
		path: string;
		line: number;
		where: string;
		says: string;
		why: string;
	}[];
}
/** A quote that was made, in the order of the job file. */
export interface RevisionOut {
	number: number;
	on: string;
	reason: string;
	changed?: string;
	sentOn?: string;
	priceCents?: number; /** Against the one before that has a price. */
	changeCents?: number;
}
export interface EstimateOut {
	format: typeof ESTIMATE_FORMAT;
	job: {
		id: string;
		title: string;
		status: string;
		surveyedOn: string;
		customer?: string;
		notes?: string;
	};
	basis: {
		priceBook: {
			name: string;
			dated: string;
			demo: boolean;
		};
		/** All of them, where several lie side by side; `priceBook` is the first. */
		priceBooks?: {
			name: string;
			dated: string;
			demo: boolean;
		}[];
		company: {
			name: string;
			dated: string;
			demo: boolean;
		};
		codeEdition?: string;
		climateZone?: string;
		/** The county map that gave the zone; absent where the job file gives it. */
		climateZoneMap?: "before-2021" | "2021";
		state: string;
		county?: string;
	};
	/** Only where the job file has them; the last one with `sentOn` is the one that the customer has. */
	revisions?: RevisionOut[];
	verdict: Verdict;
	gates: GateOut[];
	stopped: StoppedOut[];
	areas: AreaOut[];
	eaves?: {
		bays: number;
		ventedBays: number;
		baffles: number;
		windBlocks: number;
		sides: {
			id: string;
			area: string;
			where: string;
			bays: number;
			ventedBays: number;
			baffles: number;
			netFreeIn2?: number;
		}[];
	};
	/** Only where the survey has all vents; ratio is one part of vent to so many of floor. */
	atticVents?: {
		netFreeIn2: number;
		lowIn2: number;
		highIn2: number;
		neededIn2: number;
		ratio?: number;
	};
	/** What is not in the price and may be added to it, each priced by itself. */
	offers: {
		id: string;
		what: string;
		priceCents: number;
	}[];
	sealing: SealingOut[];
	ducts: DuctOut[];
	airLeakage?: AirLeakageOut;
	/** Fresh air by ASHRAE 62.2, at the tight end of the range; `fanCfm` is what a fan would have to bring. */
	ventilation?: {
		standard: string;
		totalCfm: number;
		infiltrationCreditCfm: number;
		localDeficitCfm?: number;
		fanCfm: number;
		fanNeeded: boolean;
	};
	/** Share of the heat that reaches the rooms, by what is done to the ducts. */
	ductDelivery?: {
		airCfm: number;
		leakCfmBefore: number;
		leakCfmAfter?: number;
		cases: {
			id: "as-found" | "wrap-only" | "seal-only" | "both";
			designShare: number;
			averageShare: number;
		}[];
	};
	savings?: SavingsOut;
	/** Rooms in winter against the attic's deck: assumptions, not readings. */
	moisture?: {
		dewPointF: number;
		deckF: number;
	};
	tasks: TaskOut[];
	tests: TestOut[];
	/** Steps of the office, which are no work of the crew: always the same. */
	office: {
		id: string;
		what: string;
	}[];
	materials: MaterialOut[];
	/** What goes up for each phase; `packs` are what it brings beside what earlier phases left over, so that they add up to `buy`. */
	carry: {
		phase: Phase;
		items: {
			item: string;
			quantity: number;
			unit: string;
			packs: number;
			buyUnit: string;
			leftover: boolean;
		}[];
	}[];
	labor: {
		personHours: number;
		wageCents: number;
		byPhase: Partial<Record<Phase, number>>;
		crewSize: number;
		days: number;
	};
	price: PriceOut;
	/** Only where it is asked for. */
	unitPrices?: UnitPriceOut[];
	/** Only where it is asked for, and never under a stop. */
	ranges?: RangesOut;
	findings: FindingOut[];
	overrides: {
		path: string;
		value: number | string;
		insteadOf: number | string;
	}[];
	assumptions: AssumptionOut[];
}
export type Status = "draft" | "sent" | "signed" | "expired";
export type Action = "honor" | "re-issue" | "expire" | "ask";
declare const REPRICE_JOB_FORMAT = "lidwork-reprice-job/1";
export interface RepriceGate {
	id: string;
	code: string;
	state: "stop" | "hold";
	where: string;
	why: string;
}
export interface ItemEffect {
	item: string;
	name: string; /** What the job is charged more for it. */
	costCents: number; /** What that moves the price. */
	priceCents: number;
}
/** What moved the price. All of it adds up to `changeCents`, to the cent. */
export interface Effects {
	items: ItemEffect[];
	/** Labor moves only where charts differ. */
	laborCents: number;
	/** Other trades, travel, disposal. */
	otherCents: number;
	minimumCents: number;
	/** The rounding step of the company, and the parts of cents of the lines above. */
	roundingCents: number;
}
export interface ClauseOut {
	item: string;
	basePriceCents: number;
	unitPriceCents: number;
	charged: number;
	passedOnCents: number;
}
/** One job as re-priced. */
export interface RepricedOut {
	format: typeof REPRICE_JOB_FORMAT;
	file: string;
	id: string;
	title: string;
	customer?: string;
	/** On the day asked. */
	status: Status;
	sentOn?: string;
	signedOn?: string;
	/** Last day it holds. */
	expiresOn?: string;
	action: Action;
	why: string;
	verdictOld: Verdict;
	verdictNew: Verdict;
	/** Prices are absent where work may not start. */
	oldCents?: number;
	newCents?: number;
	changeCents?: number;
	changePct?: number;
	oldCostCents?: number;
	newCostCents?: number;
	/** What honoring the old price costs: the rise of the cost. */
	lossCents?: number;
	marginPct?: number;
	/** At the old price, with the new cost. */
	honoredMarginPct?: number;
	/** What an escalation clause passes on to the owner. */
	clauses: ClauseOut[];
	/** Shut under the new book, open under the old. */
	gates: RepriceGate[];
	effects?: Effects;
}
/** A job whose quote has dates, and no day to judge it by. */
export declare class DayMissing extends Error {
	readonly name: string;
	constructor();
}
export interface FindingJson {
	readonly file: string;
	readonly line: number;
	readonly column: number;
	readonly severity: Finding["severity"];
	readonly code: string;
	readonly path: string;
	readonly message: string;
}
/** A job that was read and is valid. */
export interface Job {
	readonly id: string;
	readonly title: string;
	readonly status: "draft" | "sent" | "signed" | "expired";
	readonly file: string; /** What the functions here need of it, and nobody else. */
	readonly inner: unknown;
}
/** A price book and a company file, opened for any number of jobs. */
export interface Books {
	readonly prices: {
		readonly name: string;
		readonly dated: string;
	};
	readonly company: {
		readonly name: string;
		readonly dated: string;
	}; /** What the functions here need of them, and nobody else. */
	readonly inner: unknown;
}
/** What was asked for, with what is worth saying of it; or what is wrong. */
export type Result<T> = {
	readonly ok: true;
	readonly value: T;
	readonly findings: readonly FindingJson[];
} | {
	readonly ok: false;
	readonly findings: readonly FindingJson[];
};
/** Reads a job file. @param file the name that findings give it */
export declare function readJob(text: string | Uint8Array, file?: string): Result<Job>;
/** Reads a price book and a company file; the built-in ones stand for what is not given. */
export declare function readBooks({ prices, company }?: {
	readonly prices?: string | Uint8Array;
	readonly company?: string | Uint8Array;
}): Result<Books>;
/** Estimates one house, as `lidwork estimate --json` prints it. */
export declare function estimate(job: Job, books: Books): Result<EstimateOut>;
/** Prices one job under an old and a new price book, as a line of `lidwork reprice --ndjson`. @param on the day its quote is judged by @throws DayMissing where its quote has dates and there is no day @throws RangeError where `on` is no day of the calendar */
export declare function reprice(job: Job, { from, to, on }: {
	readonly from: Books;
	readonly to: Books;
	readonly on?: string;
}): Result<RepricedOut>;

export {};
