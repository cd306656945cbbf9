import type { CheckId } from '../../core/model/saidIds.ts'
import { checkNames } from './checkNames.ts'
import { headlines } from './headlines.ts'

/** What a number or a check is called, and one plain sentence on it. */
type AnswerText = Readonly<{ label: string; plain: string }>

/** Every number and every check by its id: a name, and one plain sentence. */
export const answers = {
  ...headlines,

  // Pier to ground.
  'beta-by-depth': { label: 'Beta by depth', plain: 'Friction for each unit of soil pressure, by an older rule for deep shafts.' },
  'side-friction-rational-ultimate': { label: 'Friction from the boring', plain: 'Grip of the soil on the side, before its factor.' },
  'side-friction-rational-allowable': { label: 'Friction from the boring, factor taken off', plain: 'With wind, the code takes half.' },
  'side-friction-by-depth-ultimate': { label: 'Friction by depth', plain: 'Grip of the soil on the side, before its factor.' },
  'side-friction-by-depth-allowable': { label: 'Friction by depth, factor taken off', plain: 'With wind, the code takes half.' },
  'presumptive-bound': {
    label: checkNames['presumptive-bound'],
    plain: 'The code gives a friction for piers that are pushed down. It is shown for scale and is never counted against uplift.',
  },
  'allowable-soil-uplift': {
    label: 'Allowable, pier to ground',
    plain: 'Side friction with its factor taken off, plus 0.6 of the weight.',
  },
  'block-weight': { label: 'Share of the block', plain: 'The pier and its share of the ground between the piers, lighter in water.' },
  'block-shear': { label: 'Grip on the faces of the block', plain: 'The grip of the side of the pier, over the outer faces of the block.' },
  'meeting-depth': { label: 'Depth where neighbors meet', plain: 'Over a foot deeper than this, two piers would lift the same ground.' },
  'soil-cone': { label: 'Volume of the cone', plain: 'Soil over the wide foot, out to a slope of the rule.' },
  'soil-cone-within': { label: 'Volume of the cone', plain: 'Soil over the wide foot, no wider than half the way to the next pier.' },
  'cone-soil-weight': { label: 'Weight of the soil cone', plain: 'The cone less the pier inside it, times the weight of the soil.' },
  'cone-and-pier-weight': { label: 'Cone and pier', plain: 'Soil in the cone and the pier, each counted once.' },
  'breakout-factor-sand': { label: 'Breakout factor, sand', plain: 'Grows with depth and with the friction angle, up to a limit.' },
  'breakout-factor-clay': { label: 'Breakout factor, clay', plain: 'Grows with depth over width, up to a limit.' },
  'breakout-sand': { label: 'Breakout in sand', plain: 'Load at which a wide foot breaks out of sand.' },
  'breakout-clay': { label: 'Breakout in clay', plain: 'Load at which a wide foot breaks out of clay.' },
  'clay-adhesion': { label: 'Clay adhesion', plain: 'Grip of clay on the side, along the length that counts.' },
  'clay-adhesion-ultimate': { label: 'Clay adhesion', plain: 'Grip of clay on the side, before its factor.' },
  'clay-adhesion-allowable': { label: 'Clay adhesion, factor taken off', plain: 'With wind, the code takes half of what was worked out.' },
  'side-friction-lower-bound-ultimate': {
    label: 'Side friction',
    plain: 'Grip of ground that was not dug, along the length that counts, before its factor.',
  },
  'side-friction-lower-bound-allowable': {
    label: 'Side friction, factor taken off',
    plain: 'With wind, the code takes half of the friction that was worked out.',
  },
  'beta-lower-bound': { label: 'Beta', plain: 'A low value of friction for each unit of soil pressure, from the friction angle.' },
  'user-friction': { label: 'Your side friction', plain: 'The friction that you entered, over the area that counts.' },
  'presumptive-friction': { label: 'Code friction on each unit of area', plain: 'A sixth of the bearing value, and no more than 500 psf.' },
  'presumptive-friction-bound': { label: 'Code friction over the side', plain: 'That friction over the whole length. No more than this.' },
  'factored-dead-load': { label: 'Weight that counts', plain: 'Codes let you count 0.6 of a weight against wind uplift.' },

  // Post to concrete.
  'connection-allowable': {
    label: 'Allowable, post to concrete',
    plain: 'The value of one bar or bolt times their number, with factors for wind, wet wood and spacing.',
  },
  'yield-value': { label: 'One bar or bolt', plain: 'The least of all the ways below in which the bar can bend or the wood can crush.' },
  'yield-mode-Im': { label: 'Mode Im', plain: 'The wood of the post crushes along the whole bar.' },
  'yield-mode-Is': { label: 'Mode Is', plain: 'What the bar bears on at the sides of the post crushes.' },
  'yield-mode-IIIs': { label: 'Mode IIIs', plain: 'The bar bends in the post and crushes what it bears on at the sides.' },
  'yield-mode-IV': { label: 'Mode IV', plain: 'The bar bends in the post and at both sides.' },
  'bar-bearing-length': { label: 'Bar in concrete on each side', plain: 'Length of bar outside the post, less the cover to the soil.' },
  'end-distance-factor': { label: 'End distance factor', plain: 'Near the end of the post the wood can split, so the bar holds less.' },
  'spacing-factor': { label: 'Spacing factor', plain: 'Bars or bolts close to each other hold less.' },
  'group-action': { label: 'Group factor', plain: 'Bars or bolts in a row do not share a load evenly.' },

  'bracket-rating': {
    label: 'Rated uplift, as you entered it',
    plain: 'From the report of the bracket maker. It stands in for bolts and anchors.',
  },

  'legs-embedment': { label: 'Legs in the concrete', plain: 'From the top of the concrete down to the lower end of the legs.' },
  'legs-steel': { label: 'Steel of the legs', plain: 'Steel area of both legs times the working stress.' },
  'legs-share': { label: 'Share that the legs reach', plain: 'Length in the concrete, over the length for full strength.' },
  'legs-allowable': { label: 'Allowable, legs in the concrete', plain: 'Full strength of the steel where the legs reach far enough.' },

  'bar-shear-allowable': { label: 'Allowable, bar sheared off', plain: 'The shear strength of the steel, less its factor.' },

  // Post.
  'net-tension': {
    label: 'Allowable, post pulled apart',
    plain: 'Tension value of the wood, times the wood that is left beside the hole.',
  },
  'row-tear-out': { label: 'Allowable, torn out of the end', plain: 'Shear value of the wood, times the two planes below the bar.' },

  // Concrete.
  'round-pier-breakout': { label: 'Breakout of a round pier', plain: 'Nominal strength of the cone that fits in the pier.' },
  'breakout-allowable': { label: 'Allowable, cone of concrete', plain: 'Nominal strength less its factors.' },
  'parting-level': { label: 'Level where it could part', plain: 'Depth below the ground of the plane just under the bar or bracket.' },
  'weight-below-plane': {
    label: 'Weight below that level',
    plain: 'This weight and the friction below it are lost if the pier parts there.',
  },
  'friction-below-plane': {
    label: 'Friction below that level',
    plain: 'What the ground holds of the pier down there, its factor taken off.',
  },
  'soil-held-below-plane': { label: 'Soil held below that level', plain: 'Soil that the wide foot down there would lift.' },
  'pull-below-plane': {
    label: 'Pull through that level',
    plain: 'All that hangs below it. It goes through the concrete there, or is lost if the pier parts.',
  },
  'development-straight': {
    label: 'Development length',
    plain: 'Length of straight bar that must be in the concrete to reach its full strength.',
  },
  'development-hook': { label: 'Development length, hooked', plain: 'Length that a bar with a hook at its end must be in the concrete.' },
  'development-head': { label: 'Development length, headed', plain: 'Length that a bar with a head at its end must be in the concrete.' },
  'bars-reach-above': { label: 'Upright bars above that level', plain: 'Length of each bar above it, up to the cover at its top.' },
  'bars-reach-below': { label: 'Upright bars below that level', plain: 'Length of each bar below it, down to the cover at its end.' },
  'bar-tension': { label: 'Upright bars in tension', plain: 'Steel area times the working stress.' },
  'vertical-bar-tension': {
    label: 'Allowable, upright bars',
    plain: 'Steel area times the working stress, where each bar reaches its development length on both sides.',
  },

  // Depth and stand-off.
  'bearing-depth-downhill': { label: 'Depth on the downhill side', plain: 'From the ground at the downhill edge down to what bears.' },
  'frost-depth': { label: checkNames['frost-depth'], plain: 'The pier should bear at or below the depth to which the ground freezes.' },
  'least-depth': { label: checkNames['least-depth'], plain: 'Codes ask that a footing bears at least this deep.' },
  'stand-off-above-concrete': {
    label: checkNames['stand-off-above-concrete'],
    plain: 'With this gap the code lets some posts go without treatment. It is no duty to stand the post off.',
  },
  'stand-off-above-concrete-least': { label: 'least gap for wood without treatment', plain: 'From the code named below.' },
  'stand-off-above-earth': {
    label: checkNames['stand-off-above-earth'],
    plain: 'With this height the code lets some posts go without treatment. It is no duty to stand the post off.',
  },
  'stand-off-above-earth-least': { label: 'least height for wood without treatment', plain: 'From the code named below.' },

  // Loads at one post.
  'demand-uplift': { label: 'Uplift on the post', plain: 'What pulls the post up, with the dead load of the roof taken off.' },
  'demand-gravity': { label: 'Downward load', plain: 'The most that presses the post down: roof, snow and wind.' },
  'demand-lateral-plumb': { label: 'Sideways load on a plumb post', plain: 'Before the post leans.' },
  'demand-lateral': { label: 'Sideways load', plain: 'What pushes the post sideways at the height given.' },
  'velocity-coefficient': { label: 'Exposure factor', plain: 'Wind grows with height, and more so over open land.' },
  'velocity-coefficient-table': {
    label: 'Exposure factor',
    plain: 'Wind grows with height, and more so over open land. Read off the table.',
  },
  'elevation-factor': { label: 'Elevation factor', plain: 'Air is thinner high up, so wind presses less.' },
  'velocity-pressure': { label: 'Wind pressure at roof height', plain: 'Pressure of the wind before the shape of the roof comes in.' },
  'free-roof-windward': { label: 'Roof value, windy half', plain: 'Net of both faces of an open roof. Below zero it lifts.' },
  'free-roof-leeward': { label: 'Roof value, sheltered half', plain: 'Net of both faces of an open roof. Below zero it lifts.' },
  'along-ridge': { label: 'Roof value along the ridge', plain: 'For the part of the roof that the wind meets first.' },
  'enclosed-windward': { label: 'Roof value, windy half', plain: 'For the outer face of the roof. Below zero it lifts.' },
  'enclosed-leeward': { label: 'Roof value, sheltered half', plain: 'For the outer face of the roof. Below zero it lifts.' },
  'windward-pressure': { label: 'Pressure, windy half', plain: 'Square to the roof. Below zero it lifts.' },
  'leeward-pressure': { label: 'Pressure, sheltered half', plain: 'Square to the roof. Below zero it lifts.' },
  'wind-by-area': { label: 'Wind at the post, by area', plain: 'Pressure on the half of the roof that the post carries, over one bay.' },
  'wind-by-statics': {
    label: 'Wind at the post, by statics',
    plain: 'Both halves of the roof, shared by the two posts as a frame shares them.',
  },
  'dead-at-post': { label: 'Dead load at the post', plain: 'Weight of the roof that the post carries.' },
  'roof-live-at-post': { label: 'Roof live load at the post', plain: 'People and things on the roof that the post carries.' },
  'snow-at-post': { label: 'Snow at the post', plain: 'Snow on the roof that the post carries.' },
  'flat-roof-snow': { label: 'Snow on the roof', plain: 'Snow on the ground, less what wind takes off an open, cold roof.' },
  'roof-push': { label: 'Push on the roof', plain: 'What wind on the slopes of one frame pushes sideways.' },
  'least-roof-push': { label: 'Least push on the roof', plain: 'The standard asks for at least this on the side view of the roof.' },

  // Bearing.
  'bearing-gross': { label: checkNames['bearing-gross'], plain: 'Load and the weight of the pier, on the ground at its bottom.' },
  'bearing-net': { label: checkNames['bearing-net'], plain: 'The same less the weight of the soil that the pier took the place of.' },
  'bearing-value': { label: 'What the ground may carry', plain: 'From the table of the code, or as you entered it.' },
  'gross-pressure': { label: 'Pressure on the ground', plain: 'Load and the weight of the pier, over the bottom.' },
  'net-pressure': {
    label: 'Pressure over that of the soil',
    plain: 'Load and the weight that the pier adds to the soil, over the bottom.',
  },
  'bearing-area': { label: 'Bottom that bears', plain: 'Area on the ground over which the load of the post is counted.' },
  'concrete-under-post': { label: 'Concrete under the post', plain: 'From the end of the post, or the bracket, down to the ground.' },
  'least-footing': { label: 'Least thickness', plain: 'Of a footing without steel, by the concrete code. It is the stricter one.' },
  'least-footing-residential': {
    label: 'Least thickness in the residential code',
    plain: 'It also asks that no footing reach farther than it is thick.',
  },
  'reach-by-bending': {
    label: 'Reach by bending',
    plain: 'How far beyond the post concrete without steel may reach before it cracks at the face of the post.',
  },
  'reach-by-punching': {
    label: 'Reach by punching',
    plain: 'How far beyond the post it may reach before the post punches through.',
  },
  'bell-thickness': { label: 'Height of the bell', plain: 'Concrete of the wide foot at the side of the shaft.' },
  'bell-reach-by-bending': { label: 'Reach of the bell by bending', plain: 'The same for the wide foot beyond the shaft.' },
  'bell-reach-by-punching': { label: 'Reach of the bell by punching', plain: 'The same for the wide foot beyond the shaft.' },
  'post-end-on-concrete': {
    label: checkNames['post-end-on-concrete'],
    plain: 'Wood presses on concrete along its grain. The weaker of the two is used.',
  },
  'end-bearing': {
    label: 'What the end of the post may press with',
    plain: 'Value of the wood along its grain, wet, less a quarter as no plate lies under it.',
  },
  'plain-bearing': { label: 'What the concrete under it may bear', plain: 'Strength of the concrete less its factors.' },
  'bearing-capacity': {
    label: 'Load that the bottom may carry',
    plain: 'What the ground may carry, times that area. The weight of the pier is part of this load.',
  },

  // Sideways.
  'lateral-embedment': { label: checkNames['lateral-embedment'], plain: 'The ground at the side keeps the pier from tipping.' },
  'lateral-held-at-grade': {
    label: checkNames['lateral-held-at-grade'],
    plain: 'A floor holds the pier at grade and the ground holds it below.',
  },
  'lateral-broms': { label: checkNames['lateral-broms'], plain: 'A second look by a method for short piles, with its own factors.' },
  'bearing-width': {
    label: 'Width that presses on the ground',
    plain: 'The hole where concrete fills it, else the post alone, corner to corner.',
  },
  embedment: { label: 'Depth that counts', plain: 'Below the downhill edge and below topsoil. No more than 12 ft.' },
  'height-above-sound-ground': { label: 'Height of the push', plain: 'From the ground that counts up to the push.' },
  'lateral-gradient': {
    label: 'Side value of the ground',
    plain: 'Pressure that the ground allows for each foot of depth, less where it stands in water.',
  },
  'needed-embedment-as-tabulated': { label: 'Depth needed', plain: 'With the value of the table.' },
  'needed-embedment-doubled': { label: 'Depth needed, value doubled', plain: 'For an isolated pole that may move half an inch.' },
  'needed-depth-at-axis': { label: 'Depth to dig for that', plain: 'From the ground at the middle of the hole.' },
  'needed-embedment-held': { label: 'Depth needed', plain: 'With a floor that holds the pier at grade.' },
  'allowable-lateral-as-tabulated': { label: 'Allowable push', plain: 'At the depth that is there, with the value of the table.' },
  'allowable-lateral-doubled': {
    label: 'Allowable push, value doubled',
    plain: 'At the depth that is there, for a pole that may move half an inch.',
  },
  'allowable-lateral-below-frost': {
    label: 'Allowable push, frost left out',
    plain: 'The same if ground that freezes and thaws counts for nothing. Codes do not ask for it.',
  },
  'allowable-lateral-held': { label: 'Allowable push', plain: 'At the depth that is there, with a floor that holds the pier.' },
  'reduced-friction-angle': { label: 'Friction angle, taken down', plain: 'Three quarters of the grip of the soil.' },
  'broms-drained': { label: 'Depth needed in sand', plain: 'A short pile that turns in sand, with twice the push.' },
  'broms-undrained': { label: 'Depth needed in clay', plain: 'A short pile that turns in clay, with twice the push.' },

  // Frost.
  'frost-jacking': {
    label: checkNames['frost-jacking'],
    plain: 'Ground that freezes to the side can lift a light pier a little each winter.',
  },
  'adfreeze-force': { label: 'Pull of frozen ground', plain: 'Bond of frozen ground at its peak, over the side of the pier in the frost.' },
  'frost-balance': { label: 'What would hold it', plain: 'Pier weight, and more friction below the frost than may be hoped for.' },
  'friction-below-frost': { label: 'Friction below the frost', plain: 'The code value for piers that are pushed down. No more than this.' },

  // Details.
  'setback-from-slope': {
    label: checkNames['setback-from-slope'],
    plain: 'Level, from the bottom of the pier out to the face of a steep slope.',
  },
  'distance-to-daylight': { label: 'Distance that is there', plain: 'Level, from the bottom of the pier to the open slope.' },
  'setback-asked': { label: 'distance asked for', plain: 'A third of the height of the slope, and no more than 40 ft.' },
  'post-clearance': { label: checkNames['post-clearance'], plain: 'Concrete needs room on all sides of the post to fill the hole.' },
  'hole-at-foot': { label: 'Hole at the foot of the post', plain: 'Width of the hole there.' },
  'hole-beside-leaning-post': {
    label: 'Hole beside the leaning post',
    plain: 'Width of the hole, less twice what the post has come over.',
  },
  'post-plumb': {
    label: checkNames['post-plumb'],
    plain: 'A post that leans stands nearer to one side, and the load on it pushes sideways.',
  },
  'lean-offset': { label: 'how far it leans', plain: 'Out of line, from its foot up to the ground.' },
  'plumb-allowance': { label: 'Lean of drilled piers', plain: 'What the tolerance for drilled piers allows over the same length.' },
  'least-hole-for-concrete': { label: 'least hole for concrete', plain: 'Post, corner to corner, and 4 in.' },
  'pier-spacing': { label: checkNames['pier-spacing'], plain: 'Piers that stand close share the soil between them.' },
  'spacing-there': { label: 'Distance that is there', plain: 'Centre to centre.' },
  'least-post-spacing': { label: 'least distance', plain: '4.5 times the post or 3 times the footing, the greater one.' },
  'bar-end-cover': { label: checkNames['bar-end-cover'], plain: 'Concrete between the ends of the bar and the soil keeps rust away.' },
  'bar-end-cover-there': { label: 'Cover that is there', plain: 'Half of what the hole is wider than the bar is long.' },
  'cover-to-earth': { label: 'cover to the soil', plain: 'Asked of concrete that is cast against soil.' },
  'longest-bar': { label: 'Longest bar that keeps its cover', plain: 'Width of the pier there, less cover at both ends.' },
  'bar-outside-post': { label: checkNames['bar-outside-post'], plain: 'What comes out on each side must reach well into the concrete.' },
  'bar-outside-there': { label: 'Length that is there', plain: 'On each side of the post.' },
  'least-bar-outside': { label: 'least length', plain: 'A limit of this tool.' },
  'vertical-bar-cover': { label: checkNames['vertical-bar-cover'], plain: 'Concrete between the upright bars and the soil.' },
  'vertical-bar-cover-there': { label: 'Cover that is there', plain: 'As set.' },
  'strength-there': { label: 'Strength of the concrete', plain: 'As set, at 28 days.' },
  'strength-structural': { label: checkNames['strength-structural'], plain: 'Least strength of concrete that carries something.' },
  'strength-structural-least': { label: 'least strength', plain: 'For structural concrete.' },
  'strength-backfill': { label: checkNames['strength-backfill'], plain: 'Least strength of concrete that fills a post hole.' },
  'strength-backfill-least': { label: 'least strength', plain: 'For concrete round a post.' },
  'strength-weather': {
    label: checkNames['strength-weather'],
    plain: 'Concrete out in frost and wet needs more strength than concrete below ground.',
  },
  'strength-weather-least': { label: 'least strength', plain: 'For this weathering, above or below the ground.' },
  'freeze-thaw': {
    label: checkNames['freeze-thaw'],
    plain: 'The code for structural concrete asks for more strength where wet concrete freezes. Codes for small houses ask for less.',
  },
  'freeze-thaw-least': { label: 'least strength', plain: 'For the class that this pier is read as.' },
  'freeze-thaw-F0': { label: 'Class F0, no frost', plain: 'Least strength of structural concrete that does not freeze.' },
  'freeze-thaw-F1': {
    label: 'Class F1, frost and little water',
    plain: 'Least strength of structural concrete that freezes and is seldom wet.',
  },
  'freeze-thaw-F2': { label: 'Class F2, frost and water', plain: 'Least strength of structural concrete that freezes and is often wet.' },
  'freeze-thaw-F3': { label: 'Class F3, frost, water and salt', plain: 'The same with salt that melts ice. Look here if there is salt.' },
  'freeze-thaw-non-structural': { label: 'If it is not structural', plain: 'What the building code asks in this class of other concrete.' },
  'freeze-thaw-water': { label: 'Most water over cement', plain: 'By weight, in this class. Nobody can see it in hard concrete.' },
  'cores-mean': { label: checkNames['cores-mean'], plain: 'Three cores of the mix as placed, as a share of the strength asked for.' },
  'cores-mean-share': { label: 'Mean share', plain: 'Rounded to a whole percent, as the limit is written.' },
  'cores-mean-exact': { label: 'Mean share, not rounded', plain: 'Mean of the three over the strength asked for.' },
  'cores-mean-least': { label: 'least mean', plain: 'For cores to be taken as good.' },
  'cores-each': { label: checkNames['cores-each'], plain: 'The weakest of three cores, as a share of the strength asked for.' },
  'cores-each-share': { label: 'Share of the weakest', plain: 'Rounded to a whole percent, as the limit is written.' },
  'cores-each-exact': { label: 'Share of the weakest, not rounded', plain: 'The weakest over the strength asked for.' },
  'cores-each-least': { label: 'least for each core', plain: 'For cores to be taken as good.' },
  'treatment-class': { label: checkNames['treatment-class'], plain: 'The end tag of the post names the places that it is treated for.' },
  'bar-in-treated-wood': { label: checkNames['bar-in-treated-wood'], plain: 'Copper in treated wood eats plain steel.' },

  // Water against the wood.
  'top-slope': { label: 'Slope of the top', plain: 'How steeply the top falls away from the post. Below zero it slopes in.' },
  'rim-above-uphill': { label: 'Rim over the ground, uphill', plain: 'Below zero, water from uphill runs in over the rim.' },
  'rim-above-downhill': { label: 'Rim over the ground, downhill', plain: 'The rim is level, so it stands higher where the ground drops.' },
  'ponded-volume': { label: 'Water in the dish', plain: 'What the dish holds round the post when it is full.' },
  'ground-fall': { label: 'Fall of the ground, uphill side', plain: 'How the ground falls away from the pier. Below zero it rises away.' },
  'ground-fall-asked': { label: 'Fall that the rule asks for', plain: 'Six inches within ten feet of a house wall.' },
  runoff: {
    label: 'Water from uphill, at most',
    plain: 'All the rain on a strip as wide as the pier and 10 ft long. The ground takes some of it.',
  },
  'ponding-start': {
    label: 'Time until water stands',
    plain: 'In steady rain, until the ground can take no more. How full it is at first is assumed.',
  },
  'joint-gap-width-along-rings': { label: 'Gap, across the width, most', plain: 'At one face, when the rings run across the width.' },
  'joint-gap-width-across-rings': { label: 'Gap, across the width, least', plain: 'At one face, when the rings lie flat to that face.' },
  'joint-gap-depth-along-rings': { label: 'Gap, across the depth, most', plain: 'At one face, when the rings run across the depth.' },
  'joint-gap-depth-across-rings': { label: 'Gap, across the depth, least', plain: 'At one face, when the rings lie flat to that face.' },
  'joint-gap-diameter-along-rings': { label: 'Gap round the pole, most', plain: 'At one side, shrinking along the rings.' },
  'joint-gap-diameter-across-rings': { label: 'Gap round the pole, least', plain: 'At one side, shrinking across the rings.' },
  'joint-volume': {
    label: 'Water in the joint, at most',
    plain: 'A wedge round the post, full at the top and closed where the joint ends.',
  },
  'round-joint-volume': {
    label: 'Water in the joint, at most',
    plain: 'A wedge round the pole, full at the top and closed where the joint ends.',
  },
  'joint-conductivity': { label: 'How fast the joint carries water', plain: 'The law for water between two smooth plates.' },
  'joint-against-concrete': {
    label: 'Joint against sound concrete',
    plain: 'So many times better at carrying water. What wets the wood is the joint, not the concrete.',
  },
  'joint-against-soil': { label: 'Joint against the soil', plain: 'So many times better at carrying water.' },
  'joint-against-fastest-soil': { label: 'Joint against the loosest such soil', plain: 'So many times better at carrying water.' },
  'joint-against-slowest-soil': { label: 'Joint against the tightest such soil', plain: 'So many times better at carrying water.' },
  'capillary-hold': { label: 'Water held up in the joint, at most', plain: 'A narrow gap holds water up by itself. A wide one drains.' },
  'fringe-top-low': { label: 'Wet up to this depth, for certain', plain: 'Depth to which water rises, by the least rise in the tables.' },
  'fringe-top-high': {
    label: 'Wet up to this depth, at most',
    plain: 'Depth to which water may rise, by the greatest rise in the tables.',
  },

  // Mix, years and cost.
  'void-share': { label: 'Gaps in the loose mix', plain: 'Share of the dry mix, as it lies, that is air and could fill with water.' },
  'space-ratio': { label: 'Room per weight of cement', plain: 'Room for paste, gaps and cement together, for each weight of cement.' },
  'hydration-water': { label: 'Water that the cement can use', plain: 'Water that binds to the cement and fills its gel.' },
  'label-water-least': { label: 'Water the bags ask for, least', plain: 'What the label says to mix in, for all the dry mix in the hole.' },
  'label-water-most': { label: 'Water the bags ask for, most', plain: 'What the label says to mix in, for all the dry mix in the hole.' },
  'void-water': { label: 'Water that fills every gap', plain: 'More than the cement can use. Too much water makes weak concrete.' },
  'wetting-shortest': { label: 'Depth wetted, shortest', plain: 'Much is lost into the ground, and the wetted mix fills up.' },
  'wetting-longest': { label: 'Depth wetted, longest', plain: 'Nothing is lost, and the water spreads thin.' },
  'day-of-share-soonest': { label: 'Day of the share you typed, soonest', plain: 'By the rule for warmth and age that hastens it most.' },
  'day-of-share-latest': { label: 'Day of the share you typed, latest', plain: 'By the rule for warmth and age that slows it most.' },
  'ratio-with-added-lean': { label: 'Water over cement, lean mix', plain: 'With the water added at the site, for the least cement.' },
  'ratio-with-added-rich': { label: 'Water over cement, rich mix', plain: 'With the water added at the site, for the most cement.' },
  'strength-left-lean': { label: 'Strength left, lean mix', plain: 'Over the strength as delivered, by the table of water and strength.' },
  'strength-left-rich': { label: 'Strength left, rich mix', plain: 'Over the strength as delivered, by the table of water and strength.' },
  'air-least': { label: 'Air asked for, least', plain: 'Share of the concrete that is fine air bubbles, against frost.' },
  'air-target': { label: 'Air asked for', plain: 'Share of the concrete that is fine air bubbles, against frost.' },
  'air-most': { label: 'Air asked for, most', plain: 'Share of the concrete that is fine air bubbles, against frost.' },
  'estimated-life-least': { label: 'Life, near end of the range', plain: 'The shortest life of the rows, times every factor.' },
  'estimated-life-most': { label: 'Life, far end of the range', plain: 'The longest life of the rows, times every factor.' },
  'zero-failure-bound-posts-cca-50': {
    label: 'What 0 of 125 can not rule out',
    plain: 'So large a share could fail, and such a test would still see none fail once in 20 times.',
  },
  'zero-failure-bound-posts-penta-50': {
    label: 'What 0 of 75 can not rule out',
    plain: 'So large a share could fail, and such a test would still see none fail once in 20 times.',
  },
  'climate-index': { label: 'Climate index', plain: 'From warmth and rain days of twelve months. For wood above ground alone.' },
  'method-cost-least': { label: 'Cost in money of today, least', plain: 'With the long life: fewest changes of the post.' },
  'method-cost-most': { label: 'Cost in money of today, most', plain: 'With the short life: most changes of the post.' },
} as const satisfies Readonly<Record<CheckId, AnswerText> & Record<string, AnswerText>>
