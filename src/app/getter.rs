//! Something a part of the screen shows or asks for, whatever it comes from.

use std::sync::{Arc, Mutex};

use leptos::attr::IntoAttributeValue;
use leptos::prelude::*;
use leptos::tachys::reactive_graph::SharedReactiveFunction;

use crate::derived::Derived;

/// A value to be read anew whenever what it depends on changes. It is one type for every place it
/// comes from, where a closure is a type of its own: what takes one is compiled, and loaded, once.
pub struct Getter<T>(Arc<dyn Fn() -> T + Send + Sync>);

impl<T> Getter<T> {
    /// The value now. Reactive.
    pub fn get(&self) -> T {
        (self.0)()
    }
}

impl<T> Clone for Getter<T> {
    fn clone(&self) -> Self {
        Self(Arc::clone(&self.0))
    }
}

impl<T: Default + 'static> Default for Getter<T> {
    fn default() -> Self {
        Self::from(T::default)
    }
}

impl<T, F: Fn() -> T + Send + Sync + 'static> From<F> for Getter<T> {
    fn from(get: F) -> Self {
        Self(Arc::new(get))
    }
}

impl<T: Clone + Send + Sync + 'static> From<RwSignal<T>> for Getter<T> {
    fn from(signal: RwSignal<T>) -> Self {
        Self::from(move || signal.get())
    }
}

impl<T: Clone + PartialEq + Send + Sync + 'static> From<Derived<T>> for Getter<T> {
    fn from(derived: Derived<T>) -> Self {
        Self::from(move || derived.get())
    }
}

impl<T: 'static> IntoRender for Getter<T>
where
    SharedReactiveFunction<T>: Render,
{
    type Output = SharedReactiveFunction<T>;

    fn into_render(self) -> Self::Output {
        Arc::new(Mutex::new(move || self.get()))
    }
}

impl<T: 'static> IntoAttributeValue for Getter<T>
where
    SharedReactiveFunction<T>: leptos::attr::AttributeValue,
{
    type Output = SharedReactiveFunction<T>;

    fn into_attribute_value(self) -> Self::Output {
        Arc::new(Mutex::new(move || self.get()))
    }
}
