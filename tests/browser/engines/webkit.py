# A browser of one's own on GTK's WebKit, steered by lines of JSON: requests on standard input, answers
# and news on descriptor 3. The WebDriver that comes with it keeps no profile and can take no picture.

import base64
import json
import os
import signal
import subprocess
import sys

import gi

gi.require_version("Gtk", "3.0")
gi.require_version("WebKit2", "4.1")
from gi.repository import Gio, GLib, Gtk, WebKit2  # noqa: E402

START = json.loads(sys.argv[1])
SHADE = 40  # Clear space between windows that stand side by side.


class Browser:
    """All windows of one profile."""

    def __init__(self, tell):
        self.tell = tell
        self.windows = []
        self.file_to_choose = None
        self.allowed = False
        manager = WebKit2.WebsiteDataManager(
            base_data_directory=f"{START['profile']}/data",
            base_cache_directory=f"{START['profile']}/cache",
        )
        self.context = WebKit2.WebContext(website_data_manager=manager)
        self.context.set_preferred_languages([START["locale"]])
        self.context.connect("download-started", self.download_started)
        # Asked for by the context when it starts a page, not by the page.
        self.context.connect("initialize-notification-permissions", self.known_permissions)

    def known_permissions(self, context):
        origins = [WebKit2.SecurityOrigin.new_for_uri(START["origin"])] if self.allowed else []
        context.initialize_notification_permissions(origins, [])

    def open_window(self, width, height):
        content = WebKit2.UserContentManager()
        for source in START["first"]:
            content.add_script(
                WebKit2.UserScript.new(
                    source,
                    WebKit2.UserContentInjectedFrames.TOP_FRAME,
                    WebKit2.UserScriptInjectionTime.START,
                    None,
                    None,
                )
            )
        view = WebKit2.WebView(web_context=self.context, user_content_manager=content)
        view.get_settings().set_enable_write_console_messages_to_stdout(True)
        view.connect("run-file-chooser", self.file_wanted)
        view.connect("permission-request", self.permission_asked)
        view.connect("resource-load-started", self.load_started)
        view.connect("print", self.print_asked)
        view.connect("web-process-terminated", lambda *_: self.tell({"news": "page gone"}))
        window = Gtk.Window(type=Gtk.WindowType.POPUP)
        window.set_default_size(width, height)
        window.add(view)
        window.show_all()
        window.move(len(self.windows) * (width + SHADE), 0)
        self.windows.append((window, view))
        return len(self.windows) - 1

    def load_started(self, _view, _resource, request):
        self.tell({"news": "request", "url": request.get_uri()})

    def print_asked(self, _view, _operation):
        self.tell({"news": "print"})
        return True

    def file_wanted(self, _view, request):
        if self.file_to_choose is None:
            request.cancel()
        else:
            request.select_files([self.file_to_choose])
            self.file_to_choose = None
        return True

    def permission_asked(self, _view, request):
        request.allow() if self.allowed else request.deny()
        return True

    def download_started(self, _context, download):
        def decide(download, name):
            download.set_destination(f"file://{START['downloads']}/{name}")
            return True

        def finished(download):
            path = download.get_destination().removeprefix("file://")
            self.tell({"news": "download", "path": path})

        download.connect("decide-destination", decide)
        download.connect("finished", finished)


def print_to(view, path, width, height, margin, done):
    """Prints as a printer of this paper would, all measures in millimetres."""
    setup = Gtk.PageSetup()
    size = Gtk.PaperSize.new_custom("sheet", "sheet", width, height, Gtk.Unit.MM)
    setup.set_paper_size(size)
    for side in ("top", "bottom", "left", "right"):
        getattr(setup, f"set_{side}_margin")(margin, Gtk.Unit.MM)
    settings = Gtk.PrintSettings()
    settings.set_printer("Print to File")
    settings.set("output-file-format", "pdf")
    settings.set("output-uri", f"file://{path}")
    settings.set_paper_size(size)
    operation = WebKit2.PrintOperation.new(view)
    operation.set_page_setup(setup)
    operation.set_print_settings(settings)
    operation.connect("finished", lambda _: done(path))
    operation.connect("failed", lambda _, error: done(error=str(error)))
    operation.print_()
    return operation


def children():
    """The processes that this one has started, with their programs' names (proc(5))."""
    found = []
    for folder in os.scandir("/proc"):
        if folder.name.isdigit():
            try:
                with open(f"{folder.path}/stat") as file:
                    before, after = file.read().rsplit(")", 1)
            except OSError:
                continue  # It has ended.
            if int(after.split()[1]) == os.getpid():
                found.append((int(folder.name), before.split("(", 1)[1]))
    return found


class Requests:
    """What can be asked for; each answers by `done`, then or later."""

    def __init__(self, browser):
        self.browser = browser
        self.under_way = []

    def view(self, asked):
        return self.browser.windows[asked["window"]][1]

    def window(self, asked, done):
        done(self.browser.open_window(asked["width"], asked["height"]))

    def close(self, asked, done):
        self.browser.windows[asked["window"]][0].destroy()
        done(None)

    def size(self, asked, done):
        self.browser.windows[asked["window"]][0].resize(asked["width"], asked["height"])
        done(None)

    def go(self, asked, done):
        view = self.view(asked)

        def changed(view, event):
            if event == WebKit2.LoadEvent.FINISHED:
                view.disconnect(watch)
                done(None)

        watch = view.connect("load-changed", changed)
        view.load_uri(asked["url"])

    def run(self, asked, done):
        def ended(view, result):
            try:
                value = view.call_async_javascript_function_finish(result)
                done(json.loads(value.to_string()) if value.is_string() else None)
            except GLib.Error as error:
                done(error=error.message)

        self.view(asked).call_async_javascript_function(
            asked["body"], -1, None, None, None, None, ended
        )

    def click(self, asked, done):
        window, _ = self.browser.windows[asked["window"]]
        left, top = window.get_position()
        where = [str(round(left + asked["x"])), str(round(top + asked["y"]))]
        self.focus(window)
        self.by_hand(["mousemove", *where, "click", "1"], done)

    def keys(self, asked, done):
        self.focus(self.browser.windows[asked["window"]][0])
        self.by_hand(["key", "--clearmodifiers", *asked["keys"]], done)

    def focus(self, window):
        """Nothing manages windows here, so that none gets the keyboard by itself."""
        subprocess.run(["xdotool", "windowfocus", str(window.get_window().get_xid())], check=False)

    def by_hand(self, what, done):
        process = Gio.Subprocess.new(["xdotool", *what], Gio.SubprocessFlags.NONE)
        process.wait_async(None, lambda *_: done(None))

    def picture(self, asked, done):
        def taken(view, result):
            surface = view.get_snapshot_finish(result)
            surface.write_to_png(asked["path"])
            done(asked["path"])

        self.view(asked).get_snapshot(
            WebKit2.SnapshotRegion.VISIBLE, WebKit2.SnapshotOptions.NONE, None, taken
        )

    def pdf(self, asked, done):
        measures = [asked[name] for name in ("path", "width", "height", "margin")]
        self.under_way.append(print_to(self.view(asked), *measures, done))

    def choose(self, asked, done):
        self.browser.file_to_choose = asked["path"]
        done(None)

    def allow(self, asked, done):
        self.browser.allowed = asked["allowed"]
        done(None)

    def kill(self, asked, done):
        killed = [pid for pid, name in children() if name.startswith(asked["name"])]
        for pid in killed:
            os.kill(pid, signal.SIGKILL)
        done(len(killed))


def main():
    out = os.fdopen(3, "w")

    def tell(message):
        out.write(json.dumps(message) + "\n")
        out.flush()

    requests = Requests(Browser(tell))
    lines = Gio.DataInputStream.new(Gio.UnixInputStream.new(0, False))

    def heard(lines, result):
        line, _ = lines.read_line_finish_utf8(result)
        if line is None:
            Gtk.main_quit()
            return
        lines.read_line_async(GLib.PRIORITY_DEFAULT, None, heard)
        asked = json.loads(line)

        def done(answer=None, error=None):
            tell({"id": asked["id"], "answer": answer, "error": error})

        try:
            getattr(requests, asked["ask"])(asked, done)
        except Exception as error:  # Told to the test, which knows what it was about.
            done(error=repr(error))

    lines.read_line_async(GLib.PRIORITY_DEFAULT, None, heard)
    tell({"news": "ready"})
    Gtk.main()


main()
