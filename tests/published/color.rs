use pourwright::color::difference::ciede2000;
use pourwright::color::kubelka_munk::{Film, Medium, Surface, k_over_s, reflectance};
use pourwright::color::lab::{D65, Lab, SRGB_BANDS, Srgb, Xyz};
use serde_json::Value;

use crate::rows::{self, Row};

#[test]
fn color() {
    for row in rows::read("color") {
        match row.id.as_str() {
            "g-de00-jump" => check_jump(&row),
            id if id.starts_with("g-de00") => check_difference(&row),
            id if id.starts_with("g-luo") => {
                let [one, other, white] = ["XYZ_s", "XYZ_t", "white"].map(|key| xyz(&row, key));
                let lab = |color: &Xyz| Lab::of(color, &white).unwrap();
                row.check(ciede2000(&lab(&one), &lab(&other)));
            }
            id if id.starts_with("g-srgb-eotf") => {
                let v = row.number("V");
                row.check(Srgb::new(v, v, v).unwrap().linear()[0]);
            }
            "g-srgb-matrix" => {
                for (i, expected) in row.expected.as_array().unwrap().iter().enumerate() {
                    let got = SRGB_BANDS.map(|band| [band.x, band.y, band.z][i]);
                    check_all(&row, expected, &got);
                }
            }
            id if id.starts_with("g-srgb-lab") => {
                let [red, green, blue] = three(&row.inputs["rgb"]);
                let lab = Srgb::new(red, green, blue).unwrap().lab();
                check_all(&row, &row.expected, &[lab.lightness(), lab.a(), lab.b()]);
            }
            "g-d65-xyz-xy" => check_all(&row, &row.expected, &[D65.x, D65.y, D65.z]),
            id if id.starts_with("g-km-ks") => row.check(k_over_s(row.number("R_inf")).unwrap()),
            id if id.starts_with("g-km-r") => {
                row.check(reflectance(row.number("K_over_S")).unwrap());
            }
            "g-km-mix-1k" => {
                let media: Vec<_> = numbers(&row, "R")
                    .into_iter()
                    .map(|r| Medium { absorption: k_over_s(r).unwrap(), scattering: 1.0 })
                    .collect();
                check_mix(&row, &media);
            }
            "g-km-mix-2k" => {
                let pairs = numbers(&row, "K").into_iter().zip(numbers(&row, "S"));
                let media: Vec<_> = pairs
                    .map(|(absorption, scattering)| Medium { absorption, scattering })
                    .collect();
                check_mix(&row, &media);
            }
            id if id.starts_with("g-km-film") => {
                let thickness = row.number("X");
                let film = Film {
                    absorption: row.number("K") * thickness,
                    scattering: row.number("S") * thickness,
                };
                row.check(film.over(row.number("Rg")).unwrap());
            }
            id if id.starts_with("g-saunderson") => {
                let surface = Surface::new(row.number("k1"), row.number("k2")).unwrap();
                row.check(surface.read(row.number("R")).unwrap());
            }
            id if id.starts_with("g-fresnel") => {
                row.check(Surface::fresnel(row.number("n")).unwrap());
            }
            other => panic!("{other} has no check"),
        }
    }
}

fn check_difference(row: &Row) {
    row.check(ciede2000(&lab(&row.inputs["lab1"]), &lab(&row.inputs["lab2"])));
}

/// Two pairs that differ by 0.0001 in b* and lie on either side of the formula's jump.
fn check_jump(row: &Row) {
    let [before, after] = ["pair10", "pair11"].map(|key| {
        let pair = &row.inputs[key];
        ciede2000(&lab(&pair[0]), &lab(&pair[1]))
    });
    row.check((after - before).abs());
}

fn check_mix(row: &Row, media: &[Medium]) {
    let parts: Vec<_> = numbers(row, "c").into_iter().zip(media.iter().copied()).collect();
    row.check(Medium::mix(&parts).unwrap().reflectance().unwrap());
}

fn check_all(row: &Row, expected: &Value, got: &[f64]) {
    let expected = expected.as_array().unwrap();
    assert_eq!(expected.len(), got.len(), "{}", row.id);
    for (expected, got) in expected.iter().zip(got) {
        row.check_against(expected.as_f64().unwrap(), *got);
    }
}

fn numbers(row: &Row, key: &str) -> Vec<f64> {
    row.inputs[key].as_array().unwrap().iter().map(|x| x.as_f64().unwrap()).collect()
}

fn three(value: &Value) -> [f64; 3] {
    [0, 1, 2].map(|i| value[i].as_f64().unwrap())
}

fn lab(value: &Value) -> Lab {
    let [lightness, a, b] = three(value);
    Lab::new(lightness, a, b).unwrap()
}

fn xyz(row: &Row, key: &str) -> Xyz {
    let [x, y, z] = three(&row.inputs[key]);
    Xyz { x, y, z }
}
