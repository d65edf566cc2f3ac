//! The cards of a route: a summary page, then a card a clamping.

use super::block::SquaredBlock;
use super::planned::Route;
use super::totals::{RouteEntry, RouteTotals};
use super::{html, json, summary, text};
use crate::error::Result;
use crate::table::Library;

/// The cards of a route.
#[derive(Clone)]
pub struct RouteCard {
    /// The route.
    pub route: Route,
    /// The lines of its summary.
    pub entries: Vec<RouteEntry>,
    /// Their sum.
    pub totals: RouteTotals,
}

impl RouteCard {
    /// Plans the route of a block and makes its cards.
    ///
    /// # Errors
    /// As [`Route::new`].
    pub fn new(block: SquaredBlock, library: &Library) -> Result<RouteCard> {
        RouteCard::of(Route::new(block, library)?)
    }

    /// The cards of a route, as after a measurement.
    ///
    /// # Errors
    /// A rate that is out of range.
    pub fn of(route: Route) -> Result<RouteCard> {
        let entries = route.entries();
        RouteCard::with(route, entries)
    }

    /// The cards of a route with a summary over these entries: those of [`Route::entries`] with
    /// other work on the part before, between or after them.
    ///
    /// # Errors
    /// A rate or a time that is out of range.
    pub fn with(route: Route, entries: Vec<RouteEntry>) -> Result<RouteCard> {
        let totals = RouteTotals::of(&entries)?;
        Ok(RouteCard {
            route,
            entries,
            totals,
        })
    }

    /// The summary as text for a terminal or a plain printer.
    pub fn summary(&self) -> String {
        text::summary(self)
    }

    /// The summary, then the card of every clamping, as text.
    pub fn text(&self) -> String {
        text::render(self, false)
    }

    /// The same, every card with its worked steps.
    pub fn text_with_steps(&self) -> String {
        text::render(self, true)
    }

    /// The summary and the cards as printable sheets of one page each: no script, no network.
    pub fn html(&self) -> String {
        html::render(self, false)
    }

    /// The sheets, each clamping's with its worked steps behind it.
    pub fn html_with_steps(&self) -> String {
        html::render(self, true)
    }

    /// Summary and cards as JSON.
    pub fn json(&self) -> serde_json::Value {
        json::render(self)
    }

    /// Every caution of every clamping and entry once.
    pub fn cautions(&self) -> Vec<String> {
        summary::cautions(self)
    }
}
