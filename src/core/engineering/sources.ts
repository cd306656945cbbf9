import type { Standing } from '../model/worked.ts'

/**
 * Where a number comes from. `locator` is the place inside the document, written in that document's own style.
 * `standing` says how well the place itself was verified for this project; a row of a table may stand lower, never higher.
 */
export type Source = Readonly<{
  title: string
  edition: string
  /** Year of the edition, or of the work; null where a source has none (a definition, common practice). */
  year: number | null
  publisher: string
  locatorStyle: 'section' | 'table' | 'equation' | 'page' | 'example' | 'whole'
  locator: string
  standing: Standing
}>

type Place = readonly [style: Source['locatorStyle'], locator: string, standing: Standing]
const document =
  (title: string, edition: string, year: number | null, publisher: string) =>
  (...[locatorStyle, locator, standing]: Place): Source => ({ title, edition, year, publisher, locatorStyle, locator, standing })

const ibc = document('International Building Code', '2012 to 2021', 2021, 'International Code Council')
const irc = document('International Residential Code', '2012 to 2021', 2018, 'International Code Council')
const nds = document('National Design Specification for Wood Construction', '2018', 2018, 'American Wood Council')
const ndsSupplement = document('NDS Supplement: Design Values for Wood Construction', '2018', 2018, 'American Wood Council')
const aci318 = document('ACI 318 Building Code Requirements for Structural Concrete', '318-19', 2019, 'American Concrete Institute')
const asce716 = document('ASCE/SEI 7 Minimum Design Loads and Associated Criteria', '7-16', 2016, 'American Society of Civil Engineers')
const asce722 = document('ASCE/SEI 7 Minimum Design Loads and Associated Criteria', '7-22', 2022, 'American Society of Civil Engineers')
const astm = (title: string, edition: string, year: number | null) => document(title, edition, year, 'ASTM International')
const gec10 = document(
  'Drilled Shafts: Construction Procedures and Design Methods (GEC 10)',
  'FHWA-NHI-18-024',
  2018,
  'Federal Highway Administration',
)
const aashto = document('AASHTO LRFD Bridge Design Specifications', 'as transcribed in open source', 2017, 'AASHTO')
const ufc = document('UFC 3-220-20 Foundations and Earth Structures', '16 January 2025', 2025, 'US Department of Defense')
const ep486 = document('ANSI/ASAE EP486 Shallow Post and Pier Foundation Design', 'EP486.2 and EP486.3', 2017, 'ASABE')
const woodHandbook = document('Wood Handbook: Wood as an Engineering Material', 'FPL-GTR-190', 2010, 'USDA Forest Service')
const forestService = (title: string, edition: string, year: number | null) => document(title, edition, year, 'USDA Forest Service')
const forestProducts = (title: string, edition: string, year: number) => document(title, edition, year, 'Forest Products Society')
const oregonState = (title: string, edition: string, year: number) => document(title, edition, year, 'Oregon State University')
const appliedHydrology = document('Applied Hydrology', '1st', 1988, 'McGraw-Hill')
const own = (title: string, standing: Standing): Source => document(title, '', null, '')('whole', '', standing)

/** Every source that a formula, a table row or a result may name. Section-level ids, so that an id alone leads to the place. */
export const sources = {
  definition: own('Definition or plain geometry', 'definition'),
  statics: own('Statics of a free body', 'definition'),
  'phase-relations': own('Weight and volume relations of solids, water and air in soil', 'definition'),
  'load-path-example': own('Worked load path from post to soil', 'computed here'),
  'computed-here': own('Computed for this project from stated inputs', 'computed here'),
  'plane-cut-solids': own('Solids of revolution cut by a plane, in closed form', 'computed here'),
  'common-practice': own('Common practice, no source', 'common practice'),
  memory: own('From memory, not checked against print', 'from memory'),
  assumption: own('Assumed for this project', 'assumed here'),
  user: own('Entered by the user', 'assumed here'),
  'mathjs-units': document('mathjs, units', '15.2.0', 2026, 'open source')('whole', '', 'computed here'),
  'nist-sp-811': document(
    'Guide for the Use of the International System of Units (SP 811)',
    '2008',
    2008,
    'NIST',
  )('section', 'Appendix B', 'definition'),

  'ibc-1605-3': ibc('section', '1605.3.1, 1605.3.2', 'read'),
  'ibc-1904-2': ibc('section', '1904.2, concrete that is not structural', 'secondary'),
  'ibc-1806-1': ibc('section', '1806.1', 'secondary'),
  'ibc-1806-2': ibc('table', 'Table 1806.2', 'secondary'),
  'ibc-1806-3': ibc('section', '1806.3.2 to 1806.3.4', 'secondary'),
  'ibc-1807-3-1': ibc('section', '1807.3.1', 'secondary'),
  'ibc-1807-3-2-1': ibc('equation', '1807.3.2.1, Equation 18-1', 'read'),
  'ibc-1807-3-2-2': ibc('equation', '1807.3.2.2, Equations 18-2 and 18-3', 'secondary'),
  'ibc-1807-3-2-3': ibc('section', '1807.3.2.3', 'secondary'),
  'ibc-1807-3-3': ibc('section', '1807.3.3', 'secondary'),
  'ibc-1808-7': ibc('section', '1808.7, Figure 1808.7.1', 'secondary'),
  'ibc-1809-4': ibc('section', '1809.4', 'secondary'),
  'ibc-1809-5': ibc('section', '1809.5', 'read'),
  'ibc-1810-3-3-1-4': ibc('section', '1810.3.3.1.4', 'secondary'),
  'ibc-1810-3-3-1-5': ibc('section', '1810.3.3.1.5', 'read'),
  'ibc-1810-3-3-1-6': ibc('section', '1810.3.3.1.6', 'secondary'),
  'ibc-2304-12': ibc('section', '2304.12', 'secondary'),
  'irc-r317-1': irc('section', 'R317.1', 'read'),
  'irc-r317-1-4': irc('section', 'R317.1.4', 'read'),
  'irc-r317-3': irc('section', 'R317.3', 'secondary'),
  'irc-r401-3': irc('section', 'R401.3', 'read'),
  'irc-r402-2': irc('table', 'Table R402.2', 'secondary'),
  'irc-r403-1-1': irc('section', 'R403.1.1', 'secondary'),
  'irc-r403-1-4-1': irc('section', 'R403.1.4.1', 'read'),
  'irc-r403-1-7-2': irc('section', 'R403.1.7.2', 'published, recomputed'),

  'nds-2018-2-3-2': nds('table', 'Table 2.3.2', 'secondary'),
  'nds-2018-3-1-2': nds('section', '3.1.2, 3.8', 'secondary'),
  'nds-2018-3-7': nds('section', '3.7.1', 'secondary'),
  'nds-2018-3-10': nds('section', '3.10.1', 'from memory'),
  'nds-2018-15-3': nds('section', '15.3.2', 'from memory'),
  'nds-2018-11-1-2': nds('section', '11.1.2', 'from memory'),
  'nds-2018-11-3': nds('section', '11.3.3, 11.3.4, Tables 11.3.3 and 11.3.4', 'secondary'),
  'nds-2018-11-3-6': nds('equation', '11.3.6, Equation 11.3-1', 'secondary'),
  'nds-2018-tables-11-3-6': nds('table', 'Tables 11.3.6A and 11.3.6C', 'published, recomputed'),
  'nds-2018-12-3-1': nds('table', 'Tables 12.3.1A and 12.3.1B', 'secondary'),
  'nds-2018-12-3-3': nds('table', 'Tables 12.3.3 and 12.3.3A', 'secondary'),
  'nds-2018-12-3-4': nds('equation', '12.3.4, Equation 12.3-11', 'secondary'),
  'nds-2018-12-5': nds('table', 'Tables 12.5.1A to 12.5.1D', 'secondary'),
  'nds-2018-12-5-2': nds('section', '12.5.2.2', 'secondary'),
  'nds-2018-tables-12a-12g': nds('table', 'Tables 12A, 12B, 12F and 12G', 'published, recomputed'),
  'nds-2018-table-12e': nds('table', 'Table 12E', 'secondary'),
  'nds-2018-table-12n': nds('table', 'Table 12N', 'published, recomputed'),
  'nds-2018-app-e': nds('section', 'Appendix E', 'from memory'),
  'nds-2018-app-i': nds('section', 'Appendix I, Table I1', 'secondary'),
  'nds-supplement-1b': ndsSupplement('table', 'Tables 1A and 1B', 'secondary'),
  'nds-supplement-3-1-3': ndsSupplement('equation', '3.1.3', 'secondary'),
  'nds-supplement-4a': ndsSupplement('table', 'Tables 4A and 4B', 'secondary'),
  'nds-supplement-4d': ndsSupplement('table', 'Table 4D', 'from memory'),

  'aci-318-14-25-4-3': document(
    'ACI 318 Building Code Requirements for Structural Concrete',
    '318-14',
    2014,
    'American Concrete Institute',
  )('section', '25.4.3.1', 'secondary'),
  'aci-318-19-14': aci318('section', 'Chapter 14', 'secondary'),
  'aci-318-19-17-5-3': aci318('section', '17.5.3', 'from memory'),
  'aci-318-19-17-6-1': aci318('equation', '17.6.1', 'secondary'),
  'aci-318-19-17-6-2': aci318('equation', '17.6.2', 'secondary'),
  'aci-318-19-17-6-3': aci318('equation', '17.6.3', 'secondary'),
  'aci-318-19-19-2': aci318('section', '19.2.1.1', 'from memory'),
  'aci-318-19-19-3': aci318('table', 'Tables 19.3.1.1 and 19.3.2.1', 'from memory'),
  'aci-318-19-20-5-1-3': aci318('table', '20.5.1.3.1', 'secondary'),
  'aci-318-19-22-4': aci318('section', '22.4.3', 'from memory'),
  'aci-318-19-25-3-1': aci318('table', 'Table 25.3.1', 'from memory'),
  'aci-318-19-25-4-2': aci318('equation', '25.4.2.4', 'secondary'),
  'aci-318-19-25-4-2-3': aci318('table', 'Table 25.4.2.3', 'from memory'),
  'aci-318-19-25-4-3': aci318('equation', '25.4.3.1', 'secondary'),
  'aci-318-19-25-4-4': aci318('equation', '25.4.4.2', 'from memory'),
  'aci-318-19-25-4-9': aci318('equation', '25.4.9.2', 'secondary'),
  'aci-318-19-26-5-2': aci318('section', '26.5.2', 'from memory'),
  'aci-318-19-26-12-6': aci318('section', '26.12.6.1(e)', 'secondary'),
  'aci-209r-92': document(
    'ACI 209R Prediction of Creep, Shrinkage, and Temperature Effects',
    '209R-92',
    1992,
    'American Concrete Institute',
  )('equation', 'Equation 2-1', 'secondary'),
  'aci-211-1': document(
    'ACI 211.1 Selecting Proportions for Concrete',
    '211.1',
    1991,
    'American Concrete Institute',
  )('table', 'Table 6.3.4(a)', 'from memory'),
  'aci-349-2r-07': document(
    'ACI 349.2R Guide to the Concrete Capacity Design Method',
    '349.2R-07',
    2007,
    'American Concrete Institute',
  )('example', 'Example A1', 'published, recomputed'),
  'anchor-guide-318-19': document(
    'Anchor design guide to ACI 318-19 chapter 17',
    '2025',
    2025,
    'as reproduced in public',
  )('example', 'worked pages', 'published, recomputed'),
  'aisc-360': document(
    'AISC 360 Specification for Structural Steel Buildings',
    '360-16',
    2016,
    'American Institute of Steel Construction',
  )('section', 'Chapters D and G', 'from memory'),

  'astm-a36': astm('ASTM A36 Carbon Structural Steel', 'current', null)('whole', 'as used in NDS 2018 table footnotes', 'secondary'),
  'astm-a153': astm('ASTM A153 Zinc Coating (Hot-Dip) on Iron and Steel Hardware', 'current', null)('whole', '', 'secondary'),
  'astm-a615': astm('ASTM A615 Deformed and Plain Carbon-Steel Bars', 'A615', null)('table', 'Tables 1 and 2', 'secondary'),
  'astm-a653': astm('ASTM A653 Steel Sheet, Zinc-Coated', 'current', null)('whole', 'as used in NDS 2018 table footnotes', 'secondary'),
  'astm-a767': astm('ASTM A767 Zinc-Coated (Galvanized) Steel Bars', 'current', null)('whole', '', 'from memory'),
  'astm-c42': astm('ASTM C42 Drilled Cores and Sawed Beams', 'current', null)('table', 'length-to-diameter factors', 'secondary'),
  'astm-c94': astm('ASTM C94 Ready-Mixed Concrete', 'to 2015; C94-17a', 2017)('section', 'discharge limits; 6.1.9', 'secondary'),
  'astm-c387': astm('ASTM C387 Packaged, Dry, Combined Materials for Concrete', 'C387', null)('whole', 'scope', 'abstract only'),

  'asce-7-16-2': asce716('section', '2.3.1, 2.4.1', 'secondary'),
  'asce-7-16-7': asce716('section', '7.3', 'secondary'),
  'asce-7-16-26': asce716('section', 'Chapter 26, Equation 26.10-1', 'secondary'),
  'asce-7-16-26-10': asce716('table', 'Table 26.10-1', 'secondary'),
  'asce-7-16-26-13': asce716('table', 'Table 26.13-1', 'secondary'),
  'asce-7-16-27-1': asce716('section', '27.1.5', 'secondary'),
  'asce-7-16-27-3': asce716('table', 'Figures 27.3-1 and 27.3-4 to 27.3-7', 'secondary'),
  'asce-7-22-2': asce722('section', '2.3.1, 2.4.1', 'from memory'),
  'asce-7-22-26': asce722('section', 'Chapter 26', 'secondary'),
  'asce-7-22-27': asce722('section', 'Chapter 27', 'secondary'),

  'gec-10-2018': gec10('table', 'Appendix A, Table A-4 and pages A-10 to A-12', 'read'),
  'gec-10-2018-side-resistance': gec10('section', 'side resistance in cohesive soil, excluded lengths', 'secondary'),
  'aashto-10-8-3-5': aashto('section', '10.8.3.5', 'secondary'),
  'oneill-reese-1999': document(
    'Drilled Shafts: Construction Procedures and Design Methods',
    'FHWA-IF-99-025',
    1999,
    'Federal Highway Administration',
  )('equation', 'depth-based beta', 'secondary'),
  'meyerhof-adams-1968': document(
    'The Ultimate Uplift Capacity of Foundations',
    'Can. Geotech. J. 5(4)',
    1968,
    'NRC Canada',
  )('whole', 'sand, circular and rectangular footings', 'from memory'),
  'meyerhof-1973': document(
    'Uplift Resistance of Inclined Anchors and Piles',
    'Proc. 8th ICSMFE',
    1973,
    'ISSMFE',
  )('whole', 'clay breakout factor', 'from memory'),
  'das-foundation-engineering': document(
    'Principles of Foundation Engineering',
    '',
    null,
    'Cengage',
  )('example', 'uplift capacity examples', 'from memory'),
  'go-95': document(
    'General Order 95, Rules for Overhead Electric Line Construction',
    'original',
    1941,
    'California Public Utilities Commission',
  )('section', 'Rule 48.5', 'read'),
  'cfem-2006': document(
    'Canadian Foundation Engineering Manual',
    '4th',
    2006,
    'Canadian Geotechnical Society',
  )('section', 'adfreeze bond, after Penner', 'secondary'),
  'crrel-tr-145': document(
    'Technical Report 145, Heaving Forces on Piles',
    'TR 145',
    1965,
    'US Army CRREL',
  )('whole', 'abstract', 'abstract only'),
  'em-1110-2-2504': document(
    'EM 1110-2-2504 Design of Sheet Pile Walls',
    '1994',
    1994,
    'US Army Corps of Engineers',
  )('table', 'Table 3-1', 'read'),
  'usbr-huang-1983': document(
    'Stability Analysis of Earth Slopes, after USBR 1977',
    '1983',
    1983,
    'Van Nostrand Reinhold',
  )('table', 'Table 3.1', 'secondary'),
  'ufc-3-220-20': ufc('equation', 'Chapter 6, Equations 6-55 to 6-65', 'secondary'),
  'fm-5-434': document(
    'FM 5-434 Earthmoving Operations',
    'FM 5-434',
    2000,
    'US Department of the Army',
  )('table', 'Table 1-1', 'from memory'),
  'tm-9-2320-366-10-1': document(
    'TM 9-2320-366-10-1, vehicle payload data',
    '',
    null,
    'US Department of the Army',
  )('table', 'Table 2-15', 'read'),
  'ep486-scope': ep486('section', '1.2.1', 'read'),
  'ep486-dec98': document('ANSI/ASAE EP486 Post and Pole Foundation Design', 'DEC98', 1998, 'ASAE')('section', '3.4.2', 'read'),
  'awpa-u1': document(
    'AWPA U1 Use Category System',
    'as listed for building officials',
    null,
    'American Wood Protection Association',
  )('whole', 'use categories', 'read'),
  'awpa-u1-retentions': document(
    'AWPA U1 Use Category System',
    'trade table, about 2013',
    2013,
    'American Wood Protection Association',
  )('table', 'retentions by commodity', 'secondary'),
  'bohnhoff-2003': document('In-Situ Hydration of a Dry Concrete Mix', 'Paper 034003', 2003, 'ASAE')('whole', 'abstract', 'abstract only'),
  'zelinka-rammer-2009': document(
    'Corrosion Rates of Fasteners in Treated Wood',
    'J. Mater. Civ. Eng. 21(12)',
    2009,
    'American Society of Civil Engineers',
  )('whole', '', 'abstract only'),
  'hud-rsdg-2017': document(
    'Residential Structural Design Guide',
    '2nd',
    2017,
    'US Department of Housing and Urban Development',
  )('example', 'Example 5.6', 'published, recomputed'),
  'aghayere-vigil-2007': document('Structural Wood Design', '1st', 2007, 'Wiley')('example', 'Example 5.7', 'published, recomputed'),
  'permit-sheets': document(
    'Public permit calculations and published calculation sheets',
    '',
    null,
    'city archives and open sheets',
  )('example', 'embedded sign and pole foundations', 'published, recomputed'),
  'bag-yields': document(
    'Construction references on packaged concrete',
    '',
    null,
    'several, public',
  )('whole', 'yield by bag weight', 'secondary'),

  'wood-handbook-4-3': woodHandbook('table', 'Table 4-3, shrinkage of domestic woods', 'read'),
  'wood-handbook-4': woodHandbook('section', 'Chapter 4, shrinkage in service and greatest moisture content', 'from memory'),
  'wood-handbook-14': document(
    'Wood Handbook: Wood as an Engineering Material',
    'copy posted 2021; edition not confirmed',
    null,
    'USDA Forest Service',
  )('section', 'Chapter 14, biodeterioration', 'read'),
  'fpl-rp-489': forestService('Moisture Content and the Shrinkage of Lumber', 'FPL-RP-489', 1989)(
    'equation',
    'width and thickness',
    'read',
  ),
  'missouri-shrinkage-4-34': document(
    'Problem 4.34, shrinkage of a deep member',
    'course page',
    null,
    'Missouri University of Science and Technology',
  )('example', 'Problem 4.34', 'published, recomputed'),
  'decay-thresholds': document(
    'Introduction on moisture thresholds of decay',
    'Materiales de Construccion 71(342)',
    2021,
    'CSIC',
  )('section', 'Introduction', 'secondary'),
  'rowell-ibach-2000': document(
    'Paper on stable and durable wood',
    'conference paper',
    2000,
    'USDA Forest Service',
  )('whole', 'abstract', 'abstract only'),

  'rawls-1983': document(
    'Green-Ampt Infiltration Parameters from Soils Data',
    'J. Hydraul. Eng. 109(1)',
    1983,
    'American Society of Civil Engineers',
  )('equation', 'Equations 1 and 2', 'read'),
  'rawls-1983-table': document(
    'Green-Ampt Infiltration Parameters from Soils Data',
    'J. Hydraul. Eng. 109(1)',
    1983,
    'American Society of Civil Engineers',
  )('table', 'averages by texture, as kept in a university toolbox of soil physics', 'secondary'),
  'chow-1988': appliedHydrology('equation', 'Chapter 4, ponding time and Philip', 'from memory'),
  'chow-1988-examples': appliedHydrology('example', 'Example 4.4.1', 'from memory'),
  'rain-or-shine-6-5': document(
    'Rain or Shine',
    'open textbook',
    null,
    'Oklahoma State University',
  )('example', 'Section 6.5, problems', 'read'),
  'heath-1983': document(
    'Basic Ground-Water Hydrology',
    'Water-Supply Paper 2220',
    1983,
    'US Geological Survey',
  )('table', 'capillary rise, as quoted on a 2012 conference poster', 'secondary'),
  'fetter-1994': document(
    'Applied Hydrogeology',
    '3rd',
    1994,
    'Macmillan',
  )('table', 'Table 6.1, as quoted on a 2012 conference poster', 'secondary'),
  'salim-hampton-2012': document(
    'Capillary Rise in Sands and Silts',
    'conference poster',
    2012,
    'Western Michigan University',
  )('whole', 'opening', 'read'),
  'capillary-rise-by-grain': own('Capillary rise from effective grain size and void ratio, classic rule', 'from memory'),
  'parallel-plates': own('Flow and capillary hold between parallel plates', 'from memory'),
  'concrete-conductivity': document('Construction materials, text online', '', null, 'public course text')('whole', '', 'secondary'),
  'fpl-splashing-rain': forestService('Beware of Splashing Rain', 'Lab Notes', null)('whole', '', 'read'),
  'timber-splash-guide': document(
    'Wood protection by detailing, guidance',
    '',
    null,
    'German timber-frame competence centre',
  )('whole', 'clearance over ground', 'secondary'),
  'irc-r317-1-5': irc('section', 'R317.1, item 5', 'read'),
  'rational-runoff': own('Rational method of runoff', 'from memory'),

  'powers-1948': document(
    'A Discussion of Cement Hydration in Relation to the Curing of Concrete',
    'Proceedings 27',
    1948,
    'Highway Research Board',
  )('whole', 'abstract', 'abstract only'),
  'powers-gel-space': own('Gel-space law of cement strength, Powers', 'from memory'),
  'gel-space-textbook': document(
    'Exam answers on the gel-space law',
    '',
    null,
    'several, public',
  )('example', '0.657 and 0.319, 240 MPa', 'secondary'),
  'nist-hydration': document('Cement hydration model documentation', '', null, 'NIST')('section', 'strength by the gel-space law', 'read'),
  'hydration-water': document('Water bound by hydrated cement', '', null, 'several, public')('whole', '0.23 and 0.42', 'secondary'),
  'cement-content': document(
    'Cement content by strength class',
    '',
    null,
    'several, public',
  )('whole', '5.5 and 6 sacks a cubic yard', 'secondary'),
  'astm-c1074': astm('ASTM C1074 Estimating Concrete Strength by the Maturity Method', 'current', null)(
    'equation',
    'Nurse-Saul, datum 0 degC for Type I',
    'secondary',
  ),
  'maturity-activation': document(
    'Activation energy of ordinary cement, 33500 J/mol',
    '',
    null,
    'one source, public',
  )('whole', '', 'secondary'),
  'aci-306': document(
    'ACI 306R Guide to Cold Weather Concreting',
    'topic page of the institute',
    null,
    'American Concrete Institute',
  )('section', 'definition of cold weather', 'read'),
  'aci-306-first-freeze': document(
    'ACI 306R Guide to Cold Weather Concreting',
    'as quoted in a trade journal',
    null,
    'American Concrete Institute',
  )('whole', '500 psi before the first freeze', 'secondary'),
  'aci-306-tables': document(
    'ACI 306R Guide to Cold Weather Concreting',
    '306R',
    2010,
    'American Concrete Institute',
  )('table', 'placing temperature and protection', 'from memory'),
  'aci-305-1': document(
    'ACI 305.1 Specification for Hot Weather Concreting',
    '305.1-14',
    2014,
    'American Concrete Institute',
  )('whole', '95 degF at discharge, also ACI 301-20', 'secondary'),
  'aci-318-19-19-3-3': aci318('table', 'Table 19.3.3.1, total air', 'from memory'),
  'astm-c94-air': astm('ASTM C94 Ready-Mixed Concrete', 'as quoted in a trade journal', 2007)(
    'table',
    'Table 1, moderate exposure, 1 in aggregate',
    'secondary',
  ),
  'ufgs-03311-air': document(
    'UFGS 03311 Marine Concrete',
    'guide specification',
    null,
    'US Department of Defense',
  )('table', 'Table 3, total air content', 'read'),
  'added-water-rule': own('One added gallon a cubic yard: slump up about 1 in, strength down 150 to 200 psi', 'from memory'),

  'iso-15686': document(
    'ISO 15686 Buildings and constructed assets: service life planning',
    '15686-1 and 15686-8',
    2008,
    'ISO',
  )('section', 'factors A to G', 'from memory'),
  'iso-15686-8-scope': document(
    'ISO 15686-8 Reference service life and service-life estimation',
    '15686-8',
    2008,
    'ISO',
  )('section', 'scope: no guidance on the values of the factors', 'read'),
  'factor-bounds': own('Bounds of 0.8 to 1.2 for each factor, customary in teaching', 'from memory'),
  'fpl-rn-02': forestService('Comparison of Wood Preservatives in Stake Tests', 'FPL-RN-02', 2011)('whole', 'abstract', 'abstract only'),
  'lebow-2015': forestProducts('Paper on treated posts after 50 years', 'Forest Prod. J. 65(7/8)', 2015)(
    'page',
    '307, abstract and opening',
    'abstract only',
  ),
  'lebow-2013': document(
    'Paper on long-term durability of treated posts and lumber',
    'Adv. Civ. Eng. Mater. 2(1)',
    2013,
    'ASTM International',
  )('page', '178 to 188, abstract', 'abstract only'),
  'highley-1995': document(
    'Paper on the durability of untreated wood above ground',
    'Int. Biodeterior. Biodegrad.',
    1995,
    'Elsevier',
  )('page', '409 to 419, abstract', 'abstract only'),
  'decks-canada-2012': document(
    'Paper on decking after 20 years at two sites in Canada',
    'Forest Prod. J. 62(7/8)',
    2012,
    'Forest Products Society',
  )('page', '566 to 570, abstract', 'abstract only'),
  'stakes-near-ground-2017': document(
    'Paper on pine stakes in and above the ground at four sites',
    'IRG/WP 17-20609',
    2017,
    'International Research Group on Wood Protection',
  )('whole', 'abstract', 'abstract only'),
  'freeman-posts': document(
    'Paper on treated posts in southern Mississippi',
    '',
    null,
    'several authors',
  )('whole', 'abstract', 'abstract only'),
  'stakes-canada-2017': forestProducts('Paper on copper-treated stakes at two sites', 'Forest Prod. J. 67(1/2)', 2017)(
    'page',
    '13, abstract',
    'abstract only',
  ),
  'lebow-2018': document(
    'Paper on stakes of several softwoods treated with copper',
    'Maderas 20(3)',
    2018,
    'Universidad del Bio-Bio',
  )('page', '359 to 368, abstract', 'abstract only'),
  'markstrom-gjovik-1992': forestService('Report on treated and untreated ponderosa fence posts', 'RM-300', 1992)(
    'whole',
    'abstract',
    'abstract only',
  ),
  'osu-bulletin-681': oregonState('Extension Bulletin 681, fence posts', 'Bulletin 681', 1947)('whole', '', 'read'),
  'osu-post-farm-1976': oregonState('Post farm report', '1976', 1976)('whole', 'abstract', 'abstract only'),
  'osu-post-farm-1985': oregonState('Post farm report', '1985, as quoted by a farm page', 1985)('whole', '', 'secondary'),
  'osu-release-1997': oregonState('News release on plastic round buried posts', 'August 1997', 1997)('whole', '', 'read'),
  'long-1941': document(
    'Paper on oak posts in the Southwest',
    'J. For. 39(8)',
    1941,
    'Society of American Foresters',
  )('page', '701 to 704, abstract', 'abstract only'),
  'nicholas-2019': document(
    'Paper on treated wood in contact with concrete',
    'Forests 11(1) 41',
    2019,
    'MDPI',
  )('whole', 'abstract', 'abstract only'),
  'scheffer-morrell-1997': forestProducts('Paper on polyethylene round the buried part of posts', 'Forest Prod. J. 47(5)', 1997)(
    'page',
    '42 to 44, abstract',
    'abstract only',
  ),
  'extension-answer-2018': document(
    'Answer on gravel and concrete round posts, Marion County, Oregon',
    '18 March 2018',
    2018,
    'Ask Extension',
  )('whole', '', 'read'),
  'rus-1730b-121': document(
    'Bulletin 1730B-121 Wood Pole Inspection and Maintenance',
    'as quoted in two trade magazines',
    null,
    'USDA Rural Utilities Service',
  )('table', 'decay zones and inspection intervals', 'secondary'),
  'scheffer-1971': forestProducts('A climate index for estimating potential for decay in wood structures above ground', '21(10)', 1971)(
    'equation',
    'the index',
    'from memory',
  ),
  'wbdg-decay': document(
    'Wood decay hazard, user guide',
    '',
    null,
    'Whole Building Design Guide',
  )('whole', 'classes at 35 and 65; ground contact is always high', 'read'),
  'fernandez-golfin-2017': document('Climate index of four Spanish cities', 'talk, 29 June 2017', 2017, 'INIA-CIFOR')('whole', '', 'read'),
  'noaa-seattle-2012': document(
    'Daily records for Seattle, 2012 to 2015',
    'as kept in vega-datasets 3.2.1',
    2015,
    'NOAA',
  )('whole', '1461 days', 'read'),
  'binomial-bound': own('Upper bound of a share when none of n failed', 'definition'),
  'weibull-two-points': own('Weibull curve through two points', 'definition'),

  'discount-factors': document(
    'Federal criteria for life-cycle cost, and ASTM E917 adjunct',
    '',
    null,
    'ASTM International and US government',
  )('equation', 'SPV, UPV and UPV*', 'read'),
  'nist-handbook-135': document(
    'NIST Handbook 135 Life-Cycle Costing Manual',
    '1995',
    1996,
    'NIST',
  )('example', 'heating and cooling example', 'from memory'),
  'femp-rate-2010': document(
    'Real discount rate for federal energy projects',
    'notice of 15 March 2010',
    2010,
    'US Department of Energy',
  )('whole', '3.0 % real, 4.0 % nominal', 'read'),
  'omb-a-94': document('Circular A-94', '1992', 1992, 'US Office of Management and Budget')('whole', '7 % real base case', 'from memory'),
  'water-and-time-examples': own('Worked examples of water, strength, life and cost', 'computed here'),
  'aci-117m-10': document(
    'ACI 117M Specification for Tolerances for Concrete Construction',
    '117M-10',
    2010,
    'American Concrete Institute',
  )('section', 'drilled piers, as quoted in an engineering article', 'secondary'),
  'aci-336-1-scope': document(
    'ACI 336.1 Specification for the Construction of Drilled Piers',
    'copies of its abstract',
    null,
    'American Concrete Institute',
  )('section', 'scope: 30 in and larger', 'secondary'),
} satisfies Readonly<Record<string, Source>>

/** Key of a source record. */
export type SourceId = keyof typeof sources
