import type { LettingGoHow } from '../../core/derive/lettingGo.ts'

/** How a link would let go, in one or two plain sentences. */
export const lettingGo: Readonly<Record<LettingGoHow, string>> = {
  'post-pulls-apart': 'The post would part at the hole for the highest bar or bolt. The lower end stays in place.',
  'post-end-tears': 'The bar or bolt would tear out of the end of the post, along the grain. The bar stays where it is.',
  'wood-bears': 'The bar or bolt would crush its way down through the wood. The post rises and the steel stays.',
  'concrete-bears': 'The bar would crush the concrete that it bears on. The post rises out of the pier.',
  'plate-bears': 'The bolt would crush the edge of its hole in the steel plate. The post rises.',
  'bar-bends': 'The bar would bend in the post and crush the wood round it. The post rises and the pier stays in the ground.',
  'bolts-bend': 'The bolts would bend and crush the wood round them. The post rises and the bracket stays.',
  'bar-shears': 'The bar would be cut at both faces of the post. The middle piece goes up with the post.',
  'bracket-gives': 'The bracket would give way, in steel or in bolts. Its report says no more here.',
  'legs-pull-out': 'The legs of the bracket would pull out of the concrete. Post and bracket go up, and the pier stays in the ground.',
  'concrete-cone': 'A cone of concrete would break out of the top of the pier, with the steel in it. The rest stays in the ground.',
  'pier-parts': 'The pier would part just under the pull. Its upper piece goes up with the post and the rest stays in the ground.',
  'pier-slides': 'The whole pier would slide up out of the ground. The soil round it stays.',
  'pier-heaves-soil':
    'The pier would come up, and its wide foot can not pass the soil. The soil right over the foot has to heave up with it. The number counts side grip and weight alone.',
  'pier-lifts-cone': 'The pier would come up with a cone of soil over its wide foot.',
  'piers-lift-block': 'The piers would come up together, with the ground between them.',
  'base-breaks-out': 'The wide foot would break out, and heave up the ground over it.',
}
