"""On the page: what the example only lent is emptied in the form as soon as a value is hers, and can be typed again."""

from playwright.sync_api import Page, expect

from .waiting import until, until_live

PHONE = {"width": 390, "height": 844}
LENT = ("name", "color", "maker", "fiber", "lot", "care_1", "care_2")


def field(page: Page, name: str):
    return page.locator(f'bench-card [name="{name}"]')


def opened(page: Page, address: str) -> Page:
    page.set_viewport_size(PHONE)
    page.goto(address)
    return page


def test_one_value_of_hers_empties_the_examples_maker_lot_and_color(page, server):
    opened(page, f"{server.address}sell/label/")
    expect(field(page, "maker")).to_have_value("Brackwend Dyehouse")
    field(page, "copies").fill("5")
    for name in LENT:
        expect(field(page, name)).to_have_value("", timeout=60_000)
    pictures = page.locator('bench-card [data-slot="pictures"]')
    expect(pictures).not_to_contain_text("Brackwend")
    expect(pictures).not_to_contain_text("WS-14")
    field(page, "maker").press_sequentially("Brackwend Dyehouse")
    expect(pictures).to_contain_text("Brackwend Dyehouse")
    expect(field(page, "lot")).to_have_value("")
    until(page, "() => location.search === '?v=1&c=5&f=Brackwend%20Dyehouse'")
    page.reload()
    until_live(page)
    expect(field(page, "copies")).to_have_value("5")
    expect(field(page, "maker")).to_have_value("Brackwend Dyehouse")
    expect(field(page, "lot")).to_have_value("")
    page.get_by_role("button", name="Back to the example").click()
    expect(field(page, "lot")).to_have_value("WS-14")
    page.get_by_role("button", name="Put my values back").click()
    expect(field(page, "lot")).to_have_value("")
    expect(field(page, "maker")).to_have_value("Brackwend Dyehouse")


def test_lists_that_are_emptied_can_be_filled_and_today_is_the_devices_day(page, server):
    opened(page, f"{server.address}sell/base-order/")
    expect(field(page, "today")).to_have_value("2026-11-26")
    field(page, "bases.1.name").fill("Alder DK")
    today = page.evaluate("() => { const now = new Date(); return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-'); }")
    expect(field(page, "today")).to_have_value(today, timeout=60_000)
    dyes = page.locator('bench-card [data-rows="dyes"]')
    expect(dyes.locator(".row")).to_have_count(0)
    expect(page.locator("bench-card output.answer .still")).to_contain_text("Still the example’s: ")
    dyes.get_by_role("button", name="Add a dye or chemical").click()
    expect(dyes.locator(".row")).to_have_count(1)
    expect(page.locator("bench-card output.answer .still")).to_contain_text("dyes and chemicals")
