//! What a fit tells of itself, one list of fields a kind of fit.

use super::{Coefficient, Estimate, KienzleFit, Regression, TaylorFit};
use crate::listing::{Cell, Column, Field, Form, Listing};
use crate::quantity::Kind;

const RATIO: Form = Form::Number(Kind::Ratio);
const LENGTH: Form = Form::Number(Kind::Length);
const SPEED: Form = Form::Number(Kind::Velocity);
const PRESSURE: Form = Form::Number(Kind::Pressure);

fn limits(estimate: &Estimate) -> Cell {
    Cell::Range(estimate.low, estimate.high)
}

fn limits_of(estimate: &Option<Estimate>) -> Cell {
    estimate.as_ref().map_or(Cell::Empty, limits)
}

fn value_of(estimate: &Option<Estimate>) -> Cell {
    estimate.map(|estimate| estimate.value).into()
}

macro_rules! fields {
    ($fit:ty; $($field:expr),* $(,)?) => {
        &[
            $($field,)*
            Field::<$fit>::new("residual_deviation", RATIO, "Standard deviation s of the logarithms about the fit.", |f| {
                f.regression.deviation.into()
            }),
            Field::<$fit>::new("correlation", RATIO, "Correlation r; the multiple one with several variables.", |f| {
                f.regression.correlation.into()
            }),
            Field::<$fit>::new("r_squared", RATIO, "Share of the squares that the fit explains.", |f| {
                f.regression.r_squared.into()
            }),
            Field::<$fit>::new("readings", Form::Whole, "Number of readings.", |f| {
                Cell::Whole(f.regression.readings() as u64)
            }),
            Field::<$fit>::new("degrees_of_freedom", Form::Whole, "Readings less coefficients.", |f| {
                Cell::Whole(f.regression.degrees_of_freedom as u64)
            }),
            Field::<$fit>::new("confidence", RATIO, "Confidence of every limit, two-sided.", |f| {
                f.regression.confidence.into()
            }),
            Field::<$fit>::new("student_t", RATIO, "Student's t of that confidence.", |f| f.regression.t.into()),
        ]
    };
}

const TAYLOR: &[Field<TaylorFit>] = fields![TaylorFit;
    Field::<TaylorFit>::new("taylor_exponent", RATIO, "Exponent n of v T^n (f/f_0)^a (d/d_0)^b = C.", |f| {
        f.exponent.value.into()
    }),
    Field::<TaylorFit>::new("taylor_exponent_limits", Form::Range(Kind::Ratio), "Limits of n.", |f| limits(&f.exponent)),
    Field::<TaylorFit>::new("taylor_speed", SPEED, "C, the cutting speed for a life of one minute at the reference feed and depth.", |f| {
        f.taylor_speed.value.into()
    }),
    Field::<TaylorFit>::new("taylor_speed_limits", Form::Range(Kind::Velocity), "Limits of C.", |f| limits(&f.taylor_speed)),
    Field::<TaylorFit>::new("feed_exponent", RATIO, "Exponent a of the feed.", |f| value_of(&f.feed_exponent)).optional(),
    Field::<TaylorFit>::new("feed_exponent_limits", Form::Range(Kind::Ratio), "Limits of a.", |f| limits_of(&f.feed_exponent)).optional(),
    Field::<TaylorFit>::new("reference_feed", LENGTH, "Feed f_0 that C is for.", |f| {
        f.law.feed.reference.map(|v| v.value).into()
    })
    .optional(),
    Field::<TaylorFit>::new("depth_exponent", RATIO, "Exponent b of the depth of cut.", |f| value_of(&f.depth_exponent)).optional(),
    Field::<TaylorFit>::new("depth_exponent_limits", Form::Range(Kind::Ratio), "Limits of b.", |f| limits_of(&f.depth_exponent)).optional(),
    Field::<TaylorFit>::new("reference_depth", LENGTH, "Depth of cut d_0 that C is for.", |f| {
        f.law.depth.reference.map(|v| v.value).into()
    })
    .optional(),
    Field::<TaylorFit>::new("tested_speeds", Form::Range(Kind::Velocity), "Cutting speeds of the readings.", |f| {
        f.law.tested_speeds.map(|(low, high)| (low.value, high.value)).into()
    })
    .optional(),
    Field::<TaylorFit>::new("tested_feeds", Form::Range(Kind::Length), "Feeds of the readings.", |f| {
        f.law.feed.tested.map(|(low, high)| (low.value, high.value)).into()
    })
    .optional(),
    Field::<TaylorFit>::new("tested_depths", Form::Range(Kind::Length), "Depths of cut of the readings.", |f| {
        f.law.depth.tested.map(|(low, high)| (low.value, high.value)).into()
    })
    .optional(),
    Field::<TaylorFit>::new("criterion", Form::Text, "When an edge counts as worn; empty where not stated.", |f| {
        Cell::Text(f.law.criterion.to_string())
    }),
    Field::<TaylorFit>::new("source", Form::Text, "Where the readings come from.", |f| (&f.law.source).into()),
];

const KIENZLE: &[Field<KienzleFit>] = fields![KienzleFit;
    Field::<KienzleFit>::new("kc11", PRESSURE, "k_c1.1, specific cutting force at a chip 1 mm thick; for use with this m_c only.", |f| {
        f.kc11.value.into()
    }),
    Field::<KienzleFit>::new("kc11_limits", Form::Range(Kind::Pressure), "Limits of k_c1.1.", |f| limits(&f.kc11)),
    Field::<KienzleFit>::new("chip_exponent", RATIO, "Exponent m_c of the chip thickness; for use with this k_c1.1 only.", |f| {
        f.chip_exponent.value.into()
    }),
    Field::<KienzleFit>::new("chip_exponent_limits", Form::Range(Kind::Ratio), "Limits of m_c.", |f| limits(&f.chip_exponent)),
    Field::<KienzleFit>::new("pair_correlation", RATIO, "Correlation of ln k_c1.1 and m_c.", |f| f.pair_correlation.into()),
    Field::<KienzleFit>::new("mean_chip_thickness", LENGTH, "Geometric mean of the chip thicknesses.", |f| {
        f.mean_chip_thickness.value.into()
    }),
    Field::<KienzleFit>::new("specific_force_at_mean", PRESSURE, "Specific cutting force at that chip, by which fits are compared.", |f| {
        f.specific_force_at_mean.value.into()
    }),
    Field::<KienzleFit>::new("specific_force_at_mean_limits", Form::Range(Kind::Pressure), "Limits of that force.", |f| {
        limits(&f.specific_force_at_mean)
    }),
    Field::<KienzleFit>::new("tested_chip_thickness", Form::Range(Kind::Length), "Thinnest and thickest chip of the readings.", |f| {
        let (low, high) = f.chip_thickness;
        Cell::Range(low.value, high.value)
    }),
    Field::<KienzleFit>::new("source", Form::Text, "Where the readings come from.", |f| (&f.pair.source).into()),
];

const COEFFICIENTS: &[Field<Coefficient>] = &[
    Field::<Coefficient>::new(
        "name",
        Form::Text,
        "The constant, or the variable that it belongs to.",
        |c| c.name.into(),
    ),
    Field::<Coefficient>::new("value", RATIO, "The value.", |c| c.value.into()),
    Field::<Coefficient>::new("standard_error", RATIO, "Its standard error.", |c| {
        c.standard_error.into()
    }),
    Field::<Coefficient>::new("low", RATIO, "Lower limit of its confidence.", |c| {
        c.low.into()
    }),
    Field::<Coefficient>::new("high", RATIO, "Upper limit of its confidence.", |c| {
        c.high.into()
    }),
    Field::<Coefficient>::new(
        "p_value",
        RATIO,
        "Probability that chance alone gives a value this far from zero.",
        |c| c.p_value.into(),
    ),
];

macro_rules! told {
    ($($fit:ty: $fields:ident;)*) => {$(
        impl $fit {
            /// What a fit tells of itself, column by column.
            pub fn columns() -> impl Iterator<Item = Column> {
                $fields.iter().map(|field| field.column)
            }

            /// Every column with its cell.
            pub fn fields(&self) -> impl Iterator<Item = (Column, Cell)> {
                $fields.iter().map(|field| (field.column, (field.cell)(self)))
            }
        }
    )*};
}

told! {
    TaylorFit: TAYLOR;
    KienzleFit: KIENZLE;
}

impl Regression {
    /// The coefficients as a listing.
    pub fn listing(&self) -> Listing {
        Listing::new("coefficients", COEFFICIENTS, &self.coefficients)
    }
}
