"""The page of the jobs in a test's hands."""

from shopcalc import files

from .phone import Phone, until

BOATHOUSE = files.static_text("boathouse.json")


def job_page(phone: Phone, path: str = "/job"):
    """The page of the jobs, when its script listens."""
    page = phone.visit(path)
    until(page, "document.querySelector('#job-choice.ready') !== null")
    return page


def with_boathouse(phone: Phone):
    """The page of the jobs with the boathouse on it."""
    page = job_page(phone)
    page.get_by_role("button", name="Show the boathouse").click()
    page.locator("#work .items li").first.wait_for()
    turn_to(page, "Order")
    return page


def turn_to(page, view):
    """One view of the job."""
    page.locator("#work .views").get_by_role("button", name=view).click()


def kept(page):
    """The document as the device keeps it."""
    return page.evaluate(
        """async () => { const { createStore, entries } = await import('/static/vendor/idb-keyval-6.2.2.js');
        return (await entries(createStore('shopcalc', 'jobs'))).map(each => each[1]); }"""
    )


def wait_until_kept(page, told):
    """Wait until the one job that the device keeps is as told."""
    for _ in range(100):
        if [told(job) for job in kept(page)] == [True]:
            return
        page.wait_for_timeout(50)
    raise AssertionError(kept(page))


def take(page, name, text):
    """Give the page a file."""
    page.locator("#job-file").set_input_files({"name": name, "mimeType": "application/json", "buffer": text.encode()})
    page.locator("#job-says").wait_for()
    return page.locator("#job-says")


def settled(page):
    """Wait until the job is drawn."""
    until(page, "document.getElementById('work').ariaBusy === 'false'")
