// Exact conversions and definitions. A number with units in it stands here and nowhere else.

export const IN_PER_FT = 12
export const IN2_PER_FT2 = 144
/** 1 US gallon = 231 in³ = 128 fl oz, exact (NIST Handbook 44, appendix C). */
export const IN3_PER_FLOZ = 231 / 128
export const LB_PER_TON = 2000
export const FT2_PER_THOUSAND = 1000
export const IN3_PER_GAL = 231
/** International foot (NIST SP 811). */
export const M_PER_FT = 0.3048
export const IN2_PER_M2 = 1 / 0.0254 ** 2
export const CFM_PER_M3_S = 60 / 0.3048 ** 3
export const HOURS_PER_DAY = 24
