import type { ReasonId } from '../../core/model/saidIds.ts'

/** Why something is counted, left to an engineer, or can't be verified: keys of the core's records and checks. */
export const reasons = {
  'weight-of-mixed-concrete': 'Concrete that was mixed before placing holds together and hangs on the post.',
  'weight-of-dry-mix':
    "Its weight would help only if the mix holds together from top to bottom. With mix placed dry that can't be verified without cores.",
  'weight-of-fill-not-tied': 'The fill is not tied to the post, so the post can slide out of it.',
  'friction-on-undisturbed-ground': 'Concrete cast against ground that was not dug grips that ground.',
  'friction-of-dry-mix':
    "The grip needs sound mix all the way to the soil. A trial of 2003 found that buried dry mix can get strong, but loose mix wetted from the top has not been tested. It can't be verified.",
  'friction-of-loose-backfill': "Soil that was thrown back is loose. No standard lets you count its grip, so it can't be verified.",
  'friction-of-granular-fill': "Packed stone presses on the post, but no standard gives a value for its grip. It can't be verified.",
  'friction-of-flowable-fill': 'The code lists this fill, but gives no value for its grip. An engineer has to decide.',
  'bar-in-concrete':
    'Standards give formulas for bars and bolts in wood and concrete, but have no row for a bar cast in a pier. An engineer has to decide.',
  'bar-in-dry-mix': "A bar holds only as well as the mix that it bears on. The strength of mix placed dry can't be verified.",
  'bar-in-soil': "A bar in soil bears on nothing that a standard lets you count. It can't be verified.",
  'bar-in-flowable-fill': "A bar in weak fill bears on little, and no standard gives a value. It can't be verified.",
  'bolts-in-bracket': 'Standards give formulas for bolts through wood with steel plates.',
  'strength-of-mixed-concrete': 'The strength of mixed concrete can be specified and tested.',
  'strength-of-dry-mix': "It can't be verified unless cores are taken. Published evidence cuts both ways.",
  'strength-of-flowable-fill': 'It is ordered by strength, but that strength is low on purpose.',
  'upper-bound-only': 'The code gives this friction for piers that are pushed down, not for uplift. So it is shown and never counted.',
  'no-length-below-frost': 'No part of the side lies both below the frost and against ground that was not dug. Only the weight is counted.',
  'no-friction-angle-for-rock': 'The code gives no friction angle for rock. Only the weight is counted.',
  'friction-entered-by-user': 'You entered this value and answer for it. A soil report should stand behind it.',
  'adhesion-from-tested-clay': 'Clay adhesion is worked out from the clay strength that you entered. It is only as good as that test.',
  'friction-from-blow-count': 'It rests on one blow count from a boring. The engineer who has the boring decides.',
  'clay-exclusions-leave-nothing':
    'In clay the top 5 ft and the lowest part do not count, and that leaves nothing. Only the weight is counted.',
  'cone-over-bell': 'The rule for a cone of soil comes from pole foundations. An engineer has to decide if it holds for this bell.',
  'cone-over-collar': 'The soil over the collar was dug and put back. An engineer has to decide if a cone of it counts.',
  'breakout-in-sand': 'The method is for anchors and footings in sand. An engineer has to decide if it holds here.',
  'breakout-in-clay': 'The method is for footings in clay. An engineer has to decide if it holds here.',
  'breakout-in-sand-shared':
    'The next pier is so near that both would lift the same ground. So the factor is taken at the depth where the two zones meet. An engineer has to decide.',
  'breakout-in-clay-shared':
    'The next pier is so near that both would lift the same ground. So the factor is taken at the depth where the two zones meet. An engineer has to decide.',
  'piers-share-a-block':
    'The code has this rule for deep foundations in a group. It is worked out for two piers or a row. With piers on all sides the ground holds less, and an engineer decides.',
  'post-in-tension': 'Standards give tension and shear values for sawn posts.',
  'plies-share-by-nails': 'Plies share a pull only through their nails. An engineer has to decide.',
  'bar-shear-of-steel': 'Standards give a shear strength for steel.',
  'breakout-screening': 'The formulas are for anchors in wide concrete. For a narrow pier this is a first look, and an engineer decides.',
  'plain-concrete-tension':
    "No code gives plain concrete a value for a straight pull, and no upright bars cross this level. It can't be verified.",
  'vertical-bars-carry': 'Upright bars cross this level and reach far enough on both sides.',
  'vertical-bars-too-short':
    "Upright bars cross this level but do not reach their development length on both sides of it. No code counts a share of it, nor plain concrete for the rest, so it can't be verified.",
  'concrete-around-post-too-weak':
    "The code counts the width of the hole where the concrete around a post has 2,000 psi or more. For weaker concrete it can't be verified.",
  'concrete-below-code':
    "The formulas hold for concrete of 2,500 psi and more. For weaker concrete no code gives them, so it can't be verified.",
  'legs-reach-far-enough':
    'The bars of the legs reach as far into the concrete as the code asks for their ends. Welds and steel above it are not looked at.',
  'legs-too-short': "The legs reach less far into the concrete than the code asks for their ends. Their hold can't be verified.",
  'flat-legs-outside-code':
    "The code says how far bars must reach into concrete. It says nothing of flat legs, so without a rating their hold can't be verified.",
  'anchors-need-evaluation': "Anchors set after the pour need their own rating. Without it their hold can't be verified.",
  'no-bar': "Nothing joins post and concrete that a standard lets you count. Their bond can't be verified.",
  'bar-outside-concrete': "A bar is not in the concrete. What it holds in other ground can't be verified.",
  'bar-without-cover': "With 3 in of concrete kept at its ends, no length of bar is left beside the post. It can't be verified.",
  'dowel-too-near-end': "The bar or bolt is nearer to the end of the post than the standard allows. It can't be verified.",
  'outside-yield-range': "The sizes are outside the range of the published formulas. It can't be verified.",
  'frost-at-downhill-edge': 'Frost is held against the depth on the downhill side, where the pier stands least deep.',
  'least-depth-at-downhill-edge': 'The depth is taken on the downhill side, where the pier stands least deep.',
  'stand-off-is-a-condition': 'This is a condition for wood without treatment. A treated post may stand lower.',
  'strength-of-pad': 'The pad is mixed concrete and can be specified and tested.',
  'bears-on-whole-bottom': 'The concrete spreads the load over the whole bottom. The value is for ground that was not dug.',
  'bears-on-what-spreads':
    'The concrete under the post spreads the load over a part of the bottom: no farther than it is thick, and no farther than concrete without steel holds. That part carries.',
  'concrete-too-thin-to-spread':
    'The concrete under the post is thinner than the 8 in that a footing without steel must have, so it is not counted to spread the load. The end of the post alone carries. The grip of concrete on wood is not counted.',
  'post-end-on-concrete': 'Standards give a value for wood that presses along its grain, and one for the concrete under it.',
  'post-stands-on-its-end':
    'The post reaches down to the ground or the stone, and its end alone carries the load. What is around it would help only by its grip on the wood or by the bar, and neither is counted for a load that pushes down.',
  'bears-on-loose-soil':
    "It bears on soil that was left loose in the hole. No code lists a value for that, so what it carries can't be verified.",
  'bears-in-topsoil': "It bears in topsoil, which carries no load in any code. What it holds there can't be verified.",
  'net-is-a-reading':
    'The code does not say if the weight of the pier counts. Taking the old soil off is a reading that an engineer has to back.',
  'concrete-presses-sideways': 'The code lists concrete as a fill round a post. The whole width of the hole presses on the ground.',
  'soil-does-not-press-sideways':
    "Native soil thrown back is not one of the fills that the code lists round a post. What it holds sideways can't be verified.",
  'dry-mix-does-not-press-sideways':
    "The code lists concrete of a known strength as a fill. The strength of mix placed dry can't be verified without cores.",
  'granular-presses-sideways': 'The code lists clean sand packed in thin layers. If this stone counts as that, an engineer has to say.',
  'flowable-fill-presses-sideways': 'The code lists this fill round a post. Only the post itself presses on it.',
  'sideways-on-slope':
    'The rule is written for level ground. Depth and height are taken from the downhill edge here. That is careful, and an engineer has to back it.',
  'ground-no-heavier-than-water':
    'The soil weight you entered is no more than that of water. Under the water table such soil presses on nothing, so it holds nothing.',
  'no-sideways-value': "You entered no side value for this ground. Without one its hold can't be verified.",
  'needs-load-and-height': 'The rule needs a sideways load and its height. Enter them, or estimate them from the roof.',
  'hinge-passes-no-moment':
    "The foot of a post on a bracket is a hinge: a push higher up does not come down to the pier as it is. The bracing of the frame has to take it, and only the design of the frame says what is left for the pier. It can't be verified here.",
  'bell-counted-as-shaft':
    'A pier with a bell holds at least what its straight shaft would, so the grip goes down to the bottom. More is counted where the neck of the bell can be shown to carry it.',
  'only-topsoil': "No part of it stands in ground that may carry load. It can't be verified.",
  'held-by-floor': 'The floor must touch the pier on the loaded side and carry the push. The value is not doubled with it.',
  'held-so-not-doubled':
    "You chose twice the value and a floor that holds the pier. A pier that is held can't move the half inch that doubling asks for, so it is not doubled.",
  'broms-is-a-second-look': 'It is another method with its own factors, not the rule of the code. It shows if the two are far apart.',
  'frost-jacking-is-a-warning':
    'The bond is a peak value, and almost no light pier would hold against it. So it is a warning. A smooth sleeve, clean stone at the side, or a base widened below the frost help.',
  'frost-grips-clean-ground-less': "Clean ground that drains is gripped far less. Nobody gives a number for that, so it can't be verified.",
  'setback-below-downhill-edge': 'The distance is level, from the downhill edge of the bottom.',
  'slope-height-not-known': "The slope is steeper than 1 in 3, and its height is not known. The distance asked for can't be verified.",
  'room-for-concrete': 'The code asks for a hole 4 in wider than the post, corner to corner.',
  'plumb-of-drilled-piers':
    'No code here says how far a post in a hole may lean. The figure is one for drilled piers, whose own rule starts at 30 in wide. An engineer has to decide.',
  'neighbours-share-soil': 'The standard for post frames speaks only of posts that stand at least this far apart.',
  'cover-keeps-steel': 'Codes ask for 3 in of concrete between steel and soil that it is cast against.',
  'bar-outside-is-a-project-limit': 'No code gives a least length. This limit was set for this tool.',
  'strength-of-structural-concrete': 'Codes name a least strength for concrete that carries load.',
  'strength-of-backfill-concrete': 'The code names a least strength for concrete that fills a post hole.',
  'weather-asks-for-air': 'Concrete out in this weather also needs 5 to 7 percent of air in the mix.',
  'weather-asks-no-air': 'For this place the table asks for strength only.',
  'freeze-thaw-is-F0':
    'Read as class F0: nothing of this concrete freezes. That is our reading of the code, and an engineer decides. Salt and sulfate are not looked at.',
  'freeze-thaw-is-F1':
    'Read as class F1: it freezes, and its top sheds water. It also needs air in the mix. That is our reading of the code, and an engineer decides. Salt and sulfate are not looked at.',
  'freeze-thaw-is-F2':
    'Read as class F2: wet soil or standing water freezes against it. It also needs air in the mix. That is our reading of the code, and an engineer decides. Salt and sulfate are not looked at.',
  'cores-tell-of-their-place': 'Cores tell of the place they were cut from. An engineer decides what they stand for.',
  'cores-not-below-limits':
    'Three cores are not below the limits of the code, so an engineer may count this mix. In a trial of 2003, dry mix buried in sand could match mixed concrete. Its authors left open how even the mix is from place to place.',
  'rating-entered-by-user': 'You entered this rating from the report of the bracket maker and answer for it.',
  'treatment-for-the-ground': 'The building code asks for this class for posts of buildings that stand in the ground or in concrete there.',
  'treatment-above-ground': 'Wood above the ground that gets wet needs at least this class, unless it stands off far enough.',
  'bar-read-as-a-fastener':
    'Codes ask for galvanized or stainless fasteners in treated wood. The bar inside the post is read as one. No study of a bar half in wood and half in concrete was found.',
  'stand-off-needs-both':
    'This is a condition for wood without treatment, and this code asks for both heights. A treated post may stand lower.',
  'stand-off-not-in-weather':
    'This edition lets wood go without treatment only out of the weather, so a post of an open building needs treatment at any height.',
} as const satisfies Readonly<Record<ReasonId, string>>
