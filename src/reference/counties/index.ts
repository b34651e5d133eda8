// Climate zones of the counties: one small file for each state, whose text is read when that state is asked for.
//
// Origin. Zones of 2021: the county table of PNNL-33270 (Pacific Northwest National Laboratory for the US Department of Energy, 2022, columns IECC21 and Moisture21
// of its climate zone data files; basc.pnnl.gov, "Guide to determining climate zone by county"). Zones before 2021: the department's county table for the editions 2006 to 2018.
// Obtained: both seen in a copy, climate_zones.csv of the MIT-licensed repository compbiolover/housing-nutrition-label, commits d4bf0b7 (2021) and b07aebc (before).
// Kusilvak AK is blank in the table of 2021; its zone was carried over from the map before. Names: US Census, as they stood from 2015 to 2019 (3,142 counties and equivalents).
// Changed against the copy: the territories and the retired row of Bedford city VA are left out, the ñ of Doña Ana is restored, LaSalle LA is written as the Census does.
// License: facts, published by the US Department of Energy and its laboratory; the repository of the copy is under the MIT License.
// Who passes the data on by itself should ask for the department's terms.
import ak from './ak.ts'
import al from './al.ts'
import ar from './ar.ts'
import az from './az.ts'
import ca from './ca.ts'
import co from './co.ts'
import ct from './ct.ts'
import dc from './dc.ts'
import de from './de.ts'
import fl from './fl.ts'
import ga from './ga.ts'
import hi from './hi.ts'
import ia from './ia.ts'
import id from './id.ts'
import il from './il.ts'
import indiana from './in.ts'
import ks from './ks.ts'
import ky from './ky.ts'
import la from './la.ts'
import ma from './ma.ts'
import md from './md.ts'
import me from './me.ts'
import mi from './mi.ts'
import mn from './mn.ts'
import mo from './mo.ts'
import ms from './ms.ts'
import mt from './mt.ts'
import nc from './nc.ts'
import nd from './nd.ts'
import ne from './ne.ts'
import nh from './nh.ts'
import nj from './nj.ts'
import nm from './nm.ts'
import nv from './nv.ts'
import ny from './ny.ts'
import oh from './oh.ts'
import ok from './ok.ts'
import or from './or.ts'
import pa from './pa.ts'
import ri from './ri.ts'
import sc from './sc.ts'
import sd from './sd.ts'
import tn from './tn.ts'
import tx from './tx.ts'
import ut from './ut.ts'
import va from './va.ts'
import vt from './vt.ts'
import wa from './wa.ts'
import wi from './wi.ts'
import wv from './wv.ts'
import wy from './wy.ts'

/** The text of each state: a line `zone before 2021, zone of 2021: names` for each pair of zones, continued on indented lines. */
export const counties: Readonly<Record<string, () => string>> = {
  AL: al, AK: ak, AZ: az, AR: ar, CA: ca, CO: co, CT: ct, DE: de, DC: dc, FL: fl, GA: ga, HI: hi, ID: id, IL: il, IN: indiana, IA: ia, KS: ks, KY: ky,
  LA: la, ME: me, MD: md, MA: ma, MI: mi, MN: mn, MS: ms, MO: mo, MT: mt, NE: ne, NV: nv, NH: nh, NJ: nj, NM: nm, NY: ny, NC: nc, ND: nd, OH: oh,
  OK: ok, OR: or, PA: pa, RI: ri, SC: sc, SD: sd, TN: tn, TX: tx, UT: ut, VT: vt, VA: va, WA: wa, WV: wv, WI: wi, WY: wy,
}
