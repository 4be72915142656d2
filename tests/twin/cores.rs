//! Work spread over the processor's cores.

use std::thread;

/// What `work` gives for each item, in the order of the items.
///
/// # Panics
/// If `work` does.
pub fn each<T: Sync, R: Send>(items: &[T], work: impl Fn(&T) -> R + Sync) -> Vec<R> {
    let cores = thread::available_parallelism().map_or(1, usize::from);
    let share = items.len().div_ceil(cores).max(1);
    thread::scope(|scope| {
        let work = &work;
        let parts: Vec<_> = items
            .chunks(share)
            .map(|part| scope.spawn(move || part.iter().map(work).collect::<Vec<R>>()))
            .collect();
        parts
            .into_iter()
            .flat_map(|part| part.join().unwrap_or_else(|panic| std::panic::resume_unwind(panic)))
            .collect()
    })
}
