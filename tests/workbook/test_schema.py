"""The published JSON Schema and the book agree, by an independent validator."""

import json

import pytest
from hypothesis import given, settings
from jsonschema import Draft202012Validator
from jsonschema.exceptions import ValidationError

from fibercalc.workbook.demo import demo_text
from fibercalc.workbook.exchange import file_text
from fibercalc.workbook.schema import file_schema

from .making import record, workbooks
from .test_exchange import BENCH

VALIDATOR = Draft202012Validator(file_schema("https://example.org/workbook-schema-1.json"))


def test_the_schema_is_a_schema():
    Draft202012Validator.check_schema(file_schema())


@settings(max_examples=60)
@given(workbooks(4))
def test_every_file_that_the_book_writes_fits_it(records):
    VALIDATOR.validate(json.loads(file_text(records, [], BENCH, "2027-01-13")))


def test_the_demo_fits_it():
    VALIDATOR.validate(json.loads(demo_text()))


GOOD = json.loads(
    file_text(
        [record(mass="100~2g", fibers=[{"fiber": "wool", "share": "75%"}])], [], None, "2027-01-13"
    )
)
WRONG = {
    "another format": {"format": "other"},
    "another schema": {"schema": 99},
    "no day": {"made": "today"},
    "a kind that is none": {"records": [GOOD["records"][0] | {"kind": "customer"}]},
    "a weight without a unit": {
        "records": [GOOD["records"][0] | {"values": {"name": "x", "mass": "100"}}]
    },
    "a weight as a number": {
        "records": [GOOD["records"][0] | {"values": {"name": "x", "mass": 100}}]
    },
    "a field that is none": {
        "records": [GOOD["records"][0] | {"values": {"name": "x", "customer": "y"}}]
    },
    "how it is known, in other words": {
        "records": [
            GOOD["records"][0] | {"values": {"name": "x", "mass": "100g", "mass_known": "hoped"}}
        ]
    },
    "no name": {"records": [GOOD["records"][0] | {"values": {"mass": "100g"}}]},
    "a reference that is a name": {
        "records": [
            GOOD["records"][0]
            | {"kind": "mill-lot", "values": {"lot": "x", "base": "Tarrow Sock"}, "rows": {}}
        ]
    },
}


@pytest.mark.parametrize("name", WRONG)
def test_what_the_book_would_refuse_does_not_fit(name):
    VALIDATOR.validate(GOOD)
    with pytest.raises(ValidationError):
        VALIDATOR.validate(GOOD | WRONG[name])
