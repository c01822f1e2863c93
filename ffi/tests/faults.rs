//! Where the faults are of calls that the table knows nothing of: mixes, arrays, columns.

use std::ffi::{CStr, CString, c_char};
use std::mem::MaybeUninit;
use std::ptr;

use pourwright_ffi::*;

type Slot<'a> = Option<&'a mut MaybeUninit<Box<Error>>>;

/// The faults of a call that fails, each as "path: message", and its status.
fn refused(call: impl FnOnce(Slot<'_>) -> i32) -> (i32, Vec<String>) {
    let mut error = MaybeUninit::uninit();
    let status = call(Some(&mut error));
    assert_ne!(status, POUR_OK);
    // SAFETY: written on failure.
    let error = unsafe { error.assume_init() };
    // SAFETY: the texts of an error, up to its count.
    let text = |text| unsafe { CStr::from_ptr(text) }.to_str().unwrap();
    let faults = (0..pour_error_count(Some(&error))).map(|index| {
        let path = text(pour_error_path(Some(&error), index));
        format!("{path}: {}", text(pour_error_message(Some(&error), index)))
    });
    (status, faults.collect())
}

/// Checks that a call is refused with one fault, which is this.
macro_rules! says {
    ($fault:expr, $call:expr) => {
        assert_eq!(refused($call), (POUR_REFUSED, vec![String::from($fault)]))
    };
}

#[test]
fn a_mix_of_materials() {
    let base = Material {
        size: size_of::<Material>(),
        name: c"base".as_ptr(),
        density_g_per_ml: 1.0,
        fused_g_per_ml: POUR_OMITTED,
        as_scooped_g_per_ml: POUR_OMITTED,
        drop_mass_g: POUR_OMITTED,
        expansion_per_kelvin: POUR_OMITTED,
        kind: POUR_KIND_PLASTISOL,
    };
    let mut mix = MaybeUninit::uninit();
    // SAFETY: one material; the mix is written on success.
    let mut mix = unsafe {
        assert_eq!(pour_mix_of_materials(&raw const base, 1, Some(&mut mix), None), POUR_OK);
        mix.assume_init()
    };
    let mut made = MaybeUninit::uninit();
    let mut of = |change: &dyn Fn(&mut Material)| {
        let mut changed = base;
        change(&mut changed);
        // SAFETY: one material, which is refused.
        let (_, faults) = refused(|error| unsafe {
            pour_mix_of_materials(&raw const changed, 1, Some(&mut made), error)
        });
        faults.join("\n").split(':').next().unwrap().to_owned()
    };
    // 0 is a number like any other: no density is 0.
    assert_eq!(of(&|base| base.density_g_per_ml = 0.0), "/materials/0/density_g_per_ml");
    assert_eq!(of(&|base| base.fused_g_per_ml = 1030.0), "/materials/0/fused_g_per_ml");
    assert_eq!(of(&|base| base.drop_mass_g = f64::NAN), "/materials/0/drop_mass_g");
    assert_eq!(of(&|base| base.expansion_per_kelvin = 1.0), "/materials/0/expansion_per_kelvin");
    assert_eq!(of(&|base| base.kind = 11), "/materials/0/kind");
    assert_eq!(of(&|base| base.size += 8), "/materials/0/size");
    for name in [c"", c" base", c"two\nlines"] {
        assert_eq!(of(&|base| base.name = name.as_ptr()), "/materials/0/name");
    }
    let names = ["a".repeat(81), "a".repeat(80), "\u{10000}".repeat(80)];
    let [long, longest, most_bytes] = names.map(|name| CString::new(name).unwrap());
    assert_eq!(of(&|base| base.name = long.as_ptr()), "/materials/0/name");
    for name in [longest, most_bytes] {
        let named = Material { name: name.as_ptr(), ..base };
        let mut mix = MaybeUninit::uninit();
        // SAFETY: one material; the mix is written on success.
        unsafe {
            assert_eq!(pour_mix_of_materials(&raw const named, 1, Some(&mut mix), None), POUR_OK);
            pour_mix_free(Some(mix.assume_init()));
        }
    }

    let name = c"base".as_ptr();
    // SAFETY: a text that ends.
    let mut add =
        |grams, error: Slot<'_>| unsafe { pour_mix_add(Some(&mut mix), name, grams, error) };
    assert_eq!(add(100.0, None), POUR_OK);
    says!("/mass_g: The mass is 1e300 g; it must be from 0 to 1e15 g.", |error| add(1e300, error));
    let (status, faults) = refused(|error| pour_mix_scale(Some(&mut mix), 1e18, error));
    assert_eq!(status, POUR_REFUSED);
    assert!(faults[0].starts_with("/factor: The mass is "), "{faults:?}");
    let mut out = MaybeUninit::uninit();
    for (celsius, says) in [
        (
            -300.0,
            "/temperature_celsius: The temperature is -300 °C; it must be from -73 to 427 °C.",
        ),
        (
            2000.0,
            "/temperature_celsius: The temperature is 2000 °C; it must be from -73 to 427 °C.",
        ),
    ] {
        says!(says, |e| pour_mix_volume(Some(&mix), POUR_PHASE_LIQUID, celsius, Some(&mut out), e));
        says!(says, |e| {
            pour_mix_density(Some(&mix), POUR_PHASE_LIQUID, celsius, 0.0, Some(&mut out), e)
        });
    }
    says!("/voids: The void fraction is 1; it must be from 0 to below 1.", |e| {
        pour_mix_density(Some(&mix), POUR_PHASE_LIQUID, 20.0, 1.0, Some(&mut out), e)
    });
    let (_, faults) = refused(|e| pour_mix_density(Some(&mix), 99, 2000.0, 1.0, None, e));
    assert_eq!(paths(&faults), ["/phase", "/temperature_celsius", "/voids", "/density_g_per_ml"]);
    pour_mix_free(Some(mix));
}

/// The paths of faults that are each "path: message".
fn paths(faults: &[String]) -> Vec<&str> {
    faults.iter().map(|fault| fault.split(':').next().unwrap()).collect()
}

/// All that is wrong with materials comes at once, of each of them.
#[test]
fn all_faults_of_materials_come_together() {
    let bad = Material {
        size: size_of::<Material>(),
        name: ptr::null(),
        density_g_per_ml: 26.0,
        fused_g_per_ml: f64::INFINITY,
        as_scooped_g_per_ml: 0.0001,
        drop_mass_g: 1e16,
        expansion_per_kelvin: -1.0,
        kind: 0,
    };
    let mut mix = MaybeUninit::uninit();
    // SAFETY: two materials, which are refused.
    let (status, faults) = refused(|error| unsafe {
        pour_mix_of_materials([bad, bad].as_ptr(), 2, Some(&mut mix), error)
    });
    assert_eq!(status, POUR_NULL);
    let members =
        ["name", "density_g_per_ml", "fused_g_per_ml", "as_scooped_g_per_ml", "drop_mass_g"];
    let members = members.into_iter().chain(["expansion_per_kelvin", "kind"]);
    let wanted: Vec<String> = (0..2)
        .flat_map(|index| members.clone().map(move |member| format!("/materials/{index}/{member}")))
        .collect();
    assert_eq!(paths(&faults), wanted);
}

/// A struct that begins with another size than its own is not read.
#[test]
fn the_size_of_an_input_is_checked() {
    let own = size_of::<pour_shot_fill_input>();
    for size in [0, 8, own - 8, own + 8, usize::MAX] {
        let mut out = MaybeUninit::uninit();
        // SAFETY: what begins with another size is not read any further.
        let fault = refused(|error| unsafe {
            pour_shot_fill((&raw const size).cast(), Some(&mut out), error)
        });
        let says = format!("/size: The struct has {size} bytes where this library's has {own}.");
        assert_eq!(fault, (POUR_REFUSED, vec![says]));
    }
    // SAFETY: null is not read.
    let fault = refused(|error| unsafe { pour_shot_fill(ptr::null(), None, error) });
    assert_eq!(fault, (POUR_NULL, vec!["/input: The pointer is null.".to_owned()]));
}

/// A number is never written with a row of digits, however large or small it is.
#[test]
fn no_number_of_a_message_is_a_row_of_digits() {
    let mut way = MaybeUninit::uninit();
    // SAFETY: texts that end; the conversion is written on success.
    let way = unsafe {
        let (from, to) = (c"gal".as_ptr(), c"mL".as_ptr());
        assert_eq!(pour_conversion_between(from, to, 0, Some(&mut way), None), POUR_OK);
        way.assume_init()
    };
    let mut out = MaybeUninit::uninit();
    let most = f64::MAX / way.times;
    for value in [-1e300, -5e-324, f64::MAX] {
        says!(
            format!("/value: {value:e} is out of range; it must be from 0 to {most:e}."),
            |error| pour_convert_with(Some(&way), value, Some(&mut out), error)
        );
    }
    assert_eq!(pour_convert_with(Some(&way), most, Some(&mut out), None), POUR_OK);
    for number in [f64::MAX, -1e300, 1e16, -5e-324] {
        let (_, faults) = refused(|error| {
            pour_piece_mass(number, number, number, number, number, Some(&mut out_of()), error)
        });
        assert!(faults.len() >= 3, "{faults:?}");
        for fault in faults {
            let row = fault.split(|sign: char| !sign.is_ascii_digit()).map(str::len).max();
            assert!(row < Some(18), "{fault}");
        }
    }
}

/// A place for a result that is not looked at.
fn out_of<T>() -> MaybeUninit<T> {
    MaybeUninit::uninit()
}

/// Units, words and columns that are wrong come together too.
#[test]
fn all_faults_of_a_conversion_come_together() {
    let none = pour_result_column { start: ptr::null_mut(), stride: 8 };
    // SAFETY: texts that end, or null; what is refused is not read.
    let (_, faults) = refused(|error| unsafe {
        pour_convert_texts_n(
            2,
            ptr::null(),
            ptr::null(),
            c"furlongs".as_ptr(),
            99,
            none,
            ptr::null_mut(),
            error,
        )
    });
    assert_eq!(paths(&faults), ["/texts", "/offsets", "/to", "/measures", "/converted"]);
    // SAFETY: texts that end, or null.
    let (_, faults) = refused(|error| unsafe {
        pour_conversion_between(c"furlongs".as_ptr(), ptr::null(), 99, None, error)
    });
    assert_eq!(paths(&faults), ["/from", "/to", "/measures", "/conversion"]);
    let (_, faults) = refused(|error| pour_convert_with(None, f64::NAN, None, error));
    assert_eq!(paths(&faults), ["/conversion", "/value", "/converted"]);
}

fn taken(text: *mut c_char) -> String {
    // SAFETY: a text of the library, freed once.
    unsafe {
        let copy = CStr::from_ptr(text).to_str().unwrap().to_owned();
        pour_string_free(text);
        copy
    }
}

/// The schemas are those of the core's files, put together again.
#[test]
fn schemas_are_those_of_the_core() {
    for name in pourwright::schema::NAMES {
        let c_name = CString::new(name).unwrap();
        let mut out = MaybeUninit::uninit();
        // SAFETY: a text that ends; the schema is written on success.
        let text = unsafe {
            assert_eq!(pour_schema(c_name.as_ptr(), Some(&mut out), None, None), POUR_OK);
            taken(out.assume_init())
        };
        let found: serde_json::Value = serde_json::from_str(&text).unwrap();
        assert_eq!(found, *pourwright::schema::schema(name).unwrap().as_value(), "{name}");
    }
    let mut out = MaybeUninit::uninit();
    says!("/name: There is no schema \"shop\".", |error| {
        // SAFETY: a text that ends.
        unsafe { pour_schema(c"shop".as_ptr(), Some(&mut out), None, error) }
    });
}

/// Whatever comes is answered by one text, with the faults of the border as those of the request.
#[test]
fn an_answer_has_the_faults() {
    // SAFETY: null, or a text that ends.
    let answer = |json: *const c_char| taken(unsafe { pour_answer(json) });
    let faults = r#"{"faults":[{"code":"#;
    assert!(
        answer(ptr::null()).starts_with(&format!("{faults}\"null-pointer\",\"path\":\"/json\""))
    );
    assert!(
        answer(c"\xff".as_ptr()).starts_with(&format!("{faults}\"not-utf8\",\"path\":\"/json\""))
    );
    for request in [
        "{",
        r#"{"calculate":"convert","amount":"6 oz","to":"mL"}"#,
        r#"{"calculate":"air","altitude":"640 m"}"#,
    ] {
        let json = CString::new(request).unwrap();
        assert_eq!(answer(json.as_ptr()), pourwright::request::answer_text(request));
    }
}

/// All numbers of a call that are out of their ranges come at once, and what they say holds.
#[test]
fn all_faults_of_a_call_come_together() {
    let mut out = MaybeUninit::uninit();
    let faults =
        refused(|error| pour_piece_mass(-5.0, 1030.0, 0.9, 2.0, 50.0, Some(&mut out), error));
    let (status, faults) = faults;
    assert_eq!(status, POUR_REFUSED);
    let mut sorted = paths(&faults);
    sorted.sort_unstable();
    assert_eq!(sorted, ["/cavity_volume_ml", "/cold_density_g_per_ml", "/feed", "/voids"]);
    // With one that is missing, and with no place for the result.
    let (status, faults) =
        refused(|error| pour_piece_mass(POUR_OMITTED, 1030.0, 0.9, 2.0, 50.0, None, error));
    assert_eq!(status, POUR_NULL);
    assert_eq!(
        paths(&faults),
        ["/result", "/cavity_volume_ml", "/cold_density_g_per_ml", "/voids", "/feed"]
    );
}

/// An array of a scalar call is aligned as its items must be.
#[test]
fn a_misaligned_array_is_refused() {
    let parts = [0.0_f64; 5];
    let parts = parts.as_ptr().cast::<u8>().wrapping_add(1).cast();
    let mut out = MaybeUninit::uninit();
    // SAFETY: what is refused is not read.
    let (status, faults) = refused(|error| unsafe {
        pour_density_of_parts(parts, 2, POUR_OMITTED, Some(&mut out), error)
    });
    assert_eq!(status, POUR_MISALIGNED);
    assert_eq!(faults, ["/parts: The address is not a multiple of 8."]);
}

/// Results that would overlap are refused, and nothing is written; one result has no next one.
#[test]
fn results_do_not_overlap() {
    let numbers = [1.0, 2.0];
    let mut masses = [0.0; 3];
    let mut ask = |rows, stride, error: Slot<'_>| {
        let columns = pour_mass_of_volume_columns {
            volume_ml: pour_column { start: numbers.as_ptr(), stride: 8 },
            density_g_per_ml: pour_column { start: numbers.as_ptr(), stride: 0 },
        };
        let mass_g = pour_result_column { start: masses[1..].as_mut_ptr(), stride };
        let results = pour_mass_of_volume_result_columns { mass_g };
        // SAFETY: room for two results a stride of at most 8 apart, on either side.
        unsafe {
            pour_mass_of_volume_n(rows, Some(&columns), Some(&results), ptr::null_mut(), error)
        }
    };
    for stride in -7..8 {
        let says = format!("/mass_g: With a stride of {stride}, results would overlap.");
        says!(says, |error| ask(2, stride, error));
        assert_eq!(ask(0, stride, None), POUR_OK);
    }
    assert_eq!(ask(1, 0, None), POUR_OK);
    assert_eq!(ask(2, 8, None), POUR_OK);
    assert_eq!(ask(2, -8, None), POUR_OK);
    assert_eq!(masses, [2.0, 1.0, 2.0]);
}
