//! The attributes of a class as a table: what each is, its name, its type, its value.

use hankwise::table::Report;

/// The methods of a class. First its attributes, each with its doc comment, which Python shows; `py` is the
/// interpreter, for values that are made in it. Then all other methods.
///
/// With `shown as` a report the class shows itself as that: as text, and as HTML in a notebook.
macro_rules! attributes {
    ($class:ident, $self:ident, $py:ident, shown as $report:expr; {$($table:tt)*} $($more:tt)*) => {
        $crate::attributes::attributes! {
            $class, $self, $py {$($table)*}
            fn __repr__(&$self) -> String {
                $crate::attributes::in_words(&$report)
            }
            fn _repr_html_(&$self) -> String {
                $report.html()
            }
            $($more)*
        }
    };
    (
        $class:ident, $self:ident, $py:ident
        { $($(#[$doc:meta])+ $name:ident: $type:ty = $value:expr;)* }
        $($more:tt)*
    ) => {
        #[pymethods]
        impl $class {
            $(
                $(#[$doc])+
                #[getter]
                #[allow(unused_variables, reason = "few values are made in the interpreter")]
                fn $name<'py>(&$self, $py: Python<'py>) -> $type {
                    $value
                }
            )*
            $($more)*
        }
    };
}

/// The methods of what can be called by its card, a formula or a calculation: those that both have, its own
/// attributes, all other methods.
macro_rules! callable {
    ($class:ident, $self:ident, $py:ident {$($table:tt)*} $($more:tt)*) => {
        $crate::attributes::attributes! {
            $class, $self, $py {
                /// Its name.
                name: &'static str = $self.card.name;
                /// Its name.
                __name__: &'static str = $self.card.name;
                /// Its name.
                __qualname__: &'static str = $self.card.name;
                /// What it is.
                __doc__: String = $self.card.description();
                /// What it says, in a sentence.
                summary: &'static str = $self.card.summary;
                /// More about it.
                details: &'static str = $self.card.details;
                /// The room of the trade in which it stands.
                room: &'static str = $self.card.room();
                /// What can do harm where the answer is acted on.
                cautions: Vec<String> = $self.card.caution_lines();
                /// The same as text, under a head that says who decides; empty for none.
                _caution_text: String = hankwise::plan::Report {
                    blocks: hankwise::plan::Block::caution_lines($self.card.caution_lines())
                        .into_iter()
                        .collect(),
                    ..hankwise::plan::Report::default()
                }
                .text();
                $($table)*
            }
            fn __reduce__<'py>(
                &$self,
                py: Python<'py>,
            ) -> PyResult<(Bound<'py, PyAny>, (&'static str,))> {
                Ok((py.import("hankwise._hankwise")?.getattr("_calc")?, ($self.card.name,)))
            }
            fn __str__(&$self) -> String {
                $self.card.description()
            }
            fn _repr_html_(&$self) -> String {
                $self.card.html()
            }
            $($more)*
        }
    };
}

/// A dictionary of Python: names, and what stands under each.
macro_rules! dict {
    ($py:expr, { $($name:literal: $value:expr),* $(,)? }) => {{
        let dict = pyo3::types::PyDict::new($py);
        $(dict.set_item($name, $value)?;)*
        dict
    }};
}

pub(crate) use {attributes, callable, dict};

/// A report as a class shows itself in a terminal.
pub(crate) fn in_words(report: &Report) -> String {
    report.text().trim_start_matches('\n').trim_end().to_owned()
}
