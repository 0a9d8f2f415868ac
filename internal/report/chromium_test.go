package report

import (
	"context"
	"fmt"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/look"
)

// browser starts Chromium for pages that must fit without a scroll bar's help.
func browser(t *testing.T) context.Context {
	t.Helper()
	return look.Browser(t, "hide-scrollbars")
}

// tab is one page, loaded, with everything that it complained about or asked
// for.
type tab struct {
	context.Context
	mu     sync.Mutex
	noises []string
}

func (b *tab) noise(format string, args ...any) {
	b.mu.Lock()
	defer b.mu.Unlock()
	b.noises = append(b.noises, fmt.Sprintf(format, args...))
}

// setting changes how the browser shows a page.
type setting func(ctx context.Context) error

// patience is how long a page may take.
const patience = time.Minute

// view loads a report's page the way a reader would see it.
func view(t *testing.T, browser context.Context, r finding.Report, settings ...setting) *tab {
	t.Helper()
	return viewPage(t, browser, render(t, HTML, r, Options{}), settings...)
}

// viewPage loads any page.
func viewPage(t *testing.T, browser context.Context, page string, settings ...setting) *tab {
	t.Helper()
	file := filepath.Join(t.TempDir(), "page.html")
	if err := os.WriteFile(file, []byte(page), 0o644); err != nil {
		t.Fatal(err)
	}
	address := (&url.URL{Scheme: "file", Path: filepath.ToSlash(file)}).String()
	own, closeTab := chromedp.NewContext(browser)
	t.Cleanup(closeTab)
	if err := chromedp.Do(own); err != nil { // opens the tab, which outlives the patience
		t.Fatal(err)
	}
	limited, cancel := context.WithTimeout(own, patience)
	t.Cleanup(cancel)
	b := &tab{Context: limited}
	if err := chromedp.Listen(limited, func(event any) {
		switch e := event.(type) {
		case *runtime.EventExceptionThrown:
			b.noise("exception: %s", e.ExceptionDetails.Text)
		case *runtime.EventConsoleAPICalled:
			b.noise("console: %s", e.Type)
		case *log.EventEntryAdded:
			b.noise("log: %s", e.Entry.Text)
		case *network.EventRequestWillBeSent:
			if e.Request.URL != address && !strings.HasPrefix(e.Request.URL, "data:image/") {
				b.noise("request: %.80s", e.Request.URL)
			}
		}
	}); err != nil {
		t.Fatal(err)
	}
	settings = append([]setting{
		func(ctx context.Context) error {
			_, err := chromedp.Call(ctx, network.Enable, network.EnableParams{})
			return err
		},
		func(ctx context.Context) error { _, err := chromedp.Call(ctx, log.Enable, cdp.Empty{}); return err },
	}, settings...)
	for _, set := range settings {
		if err := set(limited); err != nil {
			t.Fatal(err)
		}
	}
	if err := chromedp.Do(limited, chromedp.Navigate(address)); err != nil {
		t.Fatal(err)
	}
	return b
}

// viewport makes the window that large, px.
func viewport(width, height int64) setting {
	return func(ctx context.Context) error {
		return chromedp.Do(ctx, chromedp.EmulateViewport(width, height))
	}
}

// media shows the page on a screen or on paper, light or dark.
func media(kind, scheme string) setting {
	return func(ctx context.Context) error {
		_, err := chromedp.Call(ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{
			Media: kind, Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: scheme}},
		})
		return err
	}
}

// noScript keeps scripts of the page from running.
func noScript(ctx context.Context) error {
	_, err := chromedp.Call(ctx, emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: true})
	return err
}

// ask evaluates an expression on the page.
func ask[T any](t *testing.T, b *tab, expression string) T {
	t.Helper()
	answer, err := chromedp.Run(b, chromedp.Evaluate[T](expression))
	if err != nil {
		t.Fatalf("%s: %v", expression, err)
	}
	return answer
}
