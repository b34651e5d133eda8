// Apart from the schemas, so that the embedded books load without them.
export const PRICES_FORMAT = 'lidwork-prices/1'
export const COMPANY_FORMAT = 'lidwork-company/1'
