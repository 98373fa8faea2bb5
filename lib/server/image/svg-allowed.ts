/** What of SVG is drawn: shapes, groups, paint, clips and masks, and effects whose cost is known (SVG 2, chapters 5 to 14). */
export const DRAWN_ELEMENTS: ReadonlySet<string> = new Set(
  [
    'svg g defs symbol use switch path rect circle ellipse line polyline polygon image style',
    'clipPath mask pattern marker linearGradient radialGradient stop filter',
    // Filter Effects 1. Those whose cost grows with the square of a radius are not among them.
    'feBlend feColorMatrix feComponentTransfer feFuncR feFuncG feFuncB feFuncA feComposite feFlood feGaussianBlur',
    'feMerge feMergeNode feOffset feDropShadow',
  ]
    .join(' ')
    .split(' '),
);

/** Says something about a drawing and draws nothing. */
export const SILENT_ELEMENTS: ReadonlySet<string> = new Set(
  'title desc metadata view cursor color-profile font font-face glyph missing-glyph hkern vkern'.split(' '),
);

export const TEXT_ELEMENTS: ReadonlySet<string> = new Set(
  'text tspan tref textPath altGlyph flowRoot flowRegion flowPara flowSpan'.split(' '),
);

export const MOVING_ELEMENTS: ReadonlySet<string> = new Set(
  'animate animateTransform animateMotion animateColor set mpath discard'.split(' '),
);

/** Drawn only where something refers to them. */
export const REFERRED_ELEMENTS: ReadonlySet<string> = new Set(
  'defs symbol clipPath mask pattern marker linearGradient radialGradient filter'.split(' '),
);

/** Can be said in an attribute, in `style` and in a style sheet alike (SVG 2, appendix "Property index"). */
export const PROPERTIES: ReadonlySet<string> = new Set(
  [
    'clip-path clip-rule color color-interpolation color-interpolation-filters display enable-background fill',
    'fill-opacity fill-rule filter flood-color flood-opacity image-rendering isolation marker marker-end marker-mid',
    'marker-start mask mask-type mix-blend-mode opacity overflow paint-order shape-rendering stop-color stop-opacity',
    'stroke stroke-dasharray stroke-dashoffset stroke-linecap stroke-linejoin stroke-miterlimit stroke-opacity',
    'stroke-width transform transform-origin vector-effect visibility x y cx cy r rx ry width height d',
  ]
    .join(' ')
    .split(' '),
);

/** Said in attributes only. */
export const ATTRIBUTES: ReadonlySet<string> = new Set(
  [
    'id class x1 y1 x2 y2 dx dy fx fy fr points pathLength viewBox preserveAspectRatio offset gradientUnits',
    'gradientTransform spreadMethod patternUnits patternContentUnits patternTransform clipPathUnits maskUnits',
    'maskContentUnits markerUnits markerWidth markerHeight refX refY orient filterUnits primitiveUnits in in2 result',
    'type values mode operator k1 k2 k3 k4 stdDeviation edgeMode tableValues slope intercept amplitude exponent',
    'requiredExtensions requiredFeatures systemLanguage',
  ]
    .join(' ')
    .split(' '),
);
